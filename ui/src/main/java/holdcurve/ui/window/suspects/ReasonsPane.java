package holdcurve.ui.window.suspects;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Reason;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.answer.Suspect;
import holdcurve.ui.window.frame.Scrolled;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What speaks for and against the chosen suspect. */
final class ReasonsPane extends VBox {
  private static final int MOST = 6;

  private final SuspectsModel model;
  private final Label heading = SuspectLine.words("", "hc-heading");
  private final VBox pro = new VBox(4);
  private final VBox contra = new VBox(4);

  ReasonsPane(SuspectsModel model) {
    this.model = model;
    setId("reasons");
    getStyleClass().add("hc-drawer");
    HBox both = new HBox(24, pro, contra);
    for (VBox half : List.of(pro, contra)) {
      half.setPrefWidth(100);
      HBox.setHgrow(half, Priority.ALWAYS);
    }
    ScrollPane scroll = Scrolled.down(both);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(heading, scroll);
    model.ranking().addListener((property, before, now) -> show());
    model.chosenProperty().addListener((property, before, now) -> show());
    model.unit().addListener((property, before, now) -> show());
    show();
  }

  private void show() {
    pro.getChildren().clear();
    contra.getChildren().clear();
    Optional<Reasons> reasons = model.reasons();
    heading.setText(reasons.map(this::heading).orElse(nothing()));
    reasons.ifPresent(
        one -> {
          fill(pro, "Speaks for it", one.reasons().stream().filter(Reason::speaksFor).toList());
          fill(
              contra,
              "Speaks against it",
              one.reasons().stream().filter(reason -> !reason.speaksFor()).toList());
        });
  }

  private String nothing() {
    return model.ranking().getValue() == null
        ? "Not worked out: rank the suspects (F5)."
        : "Reasons are given for the likeliest suspects and for no fault: choose one of those.";
  }

  private String heading(Reasons reasons) {
    Ranking ranking = model.ranking().getValue();
    return title(ranking.suspect(reasons.suspect()))
        + ", compared with "
        + title(ranking.suspect(reasons.rival()));
  }

  private static String title(Suspect suspect) {
    return suspect.where().isEmpty() ? suspect.name() : suspect.name() + " – " + suspect.where();
  }

  private void fill(VBox half, String title, List<Reason> reasons) {
    half.getChildren().add(SuspectLine.words(title, "hc-muted"));
    if (reasons.isEmpty()) {
      half.getChildren().add(SuspectLine.words("Nothing to speak of."));
    }
    for (Reason reason : reasons.subList(0, Math.min(MOST, reasons.size()))) {
      String said = reason.said().in(model.unit().getValue());
      half.getChildren().add(SuspectLine.words("–  " + said + " (" + reason.strength() + ")"));
    }
    if (reasons.size() > MOST) {
      half.getChildren()
          .add(SuspectLine.words("and " + (reasons.size() - MOST) + " lesser ones", "hc-muted"));
    }
  }
}
