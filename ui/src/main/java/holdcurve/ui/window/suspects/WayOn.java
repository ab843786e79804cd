package holdcurve.ui.window.suspects;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Verdict;
import holdcurve.ui.window.frame.Desk;
import javafx.scene.control.Button;

/** The one button that leads on from a ranking: to the next test, the repair, or the report. */
final class WayOn extends Button {
  private final SuspectsModel model;
  private final NextTestModel next;
  private final Desk desk;

  WayOn(SuspectsModel model, NextTestModel next, Desk desk) {
    this.model = model;
    this.next = next;
    this.desk = desk;
    setId("way-on");
    setMinWidth(USE_PREF_SIZE);
    getStyleClass().add("accent");
    model.ranking().addListener((property, before, now) -> show());
    next.planProperty().addListener((property, before, now) -> show());
    desk.jobs().ranking().outdatedProperty().addListener((property, before, now) -> show());
    managedProperty().bind(visibleProperty());
    show();
  }

  private void show() {
    Ranking ranking = model.ranking().getValue();
    setVisible(ranking != null && !desk.jobs().ranking().outdatedProperty().get());
    if (ranking == null) {
      return;
    }
    Verdict.Kind kind = ranking.verdict().kind();
    if (kind == Verdict.Kind.SOUND) {
      lead("To the report", () -> desk.page().set("Repair check"));
    } else if (next.isAnyWorthIt() && next.planProperty().get() != null) {
      lead("Do the next test", this::test);
    } else if (kind == Verdict.Kind.LEAK || kind == Verdict.Kind.FAULT) {
      lead("Note the repair", () -> desk.page().set("Repair check"));
    } else {
      lead("Hold again", this::hold);
    }
  }

  private void test() {
    desk.page().set("Hold tests");
    next.doBest();
  }

  private void hold() {
    desk.page().set("Hold tests");
    desk.jobs().startHold();
  }

  private void lead(String words, Runnable what) {
    setText(words);
    setOnAction(event -> what.run());
  }
}
