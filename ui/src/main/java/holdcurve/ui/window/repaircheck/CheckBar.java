package holdcurve.ui.window.repaircheck;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.RepairCheck;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Timeline;
import holdcurve.ui.window.frame.Sign;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The answer: a sign, a word, the sentence, and what to do now. */
final class CheckBar extends HBox {
  private final RepairCheckModel model;
  private final Label word = new Label();
  private final Label sentence = new Label();
  private final Label next = new Label();
  private final VBox words = new VBox(sentence, next);
  private final Button again = new Button("Hold again");

  /**
   * @param holdAgain makes a hold ready and turns to it
   */
  CheckBar(RepairCheckModel model, Runnable holdAgain) {
    this.model = model;
    again.setId("hold-again");
    again.getStyleClass().add("accent");
    again.setMinWidth(USE_PREF_SIZE);
    again.setOnAction(event -> holdAgain.run());
    setId("check-verdict");
    word.getStyleClass().add("hc-word");
    word.setMinWidth(Region.USE_PREF_SIZE);
    sentence.getStyleClass().add("hc-sentence");
    for (Label label : new Label[] {sentence, next}) {
      label.setWrapText(true);
      label.setMinHeight(Region.USE_PREF_SIZE);
    }
    next.managedProperty().bind(next.textProperty().isNotEmpty());
    HBox.setHgrow(words, Priority.ALWAYS);
    model.checkProperty().addListener((property, before, now) -> show(now));
    model.unit().addListener((property, before, now) -> show(model.checkProperty().get()));
    model.jobProperty().addListener((property, before, now) -> show(model.checkProperty().get()));
    show(model.checkProperty().get());
  }

  private void show(RepairCheck check) {
    getStyleClass().setAll("hc-verdict");
    Optional<Repair> unproved = model.unproved();
    if (unproved.isPresent()) {
      show("open", Sign.QUESTION, "Not proved yet");
      sentence.setText(Timeline.holdAgain(unproved.get()));
      next.setText("");
      getChildren().add(again);
      return;
    }
    if (check == null) {
      sentence.setText("Not checked yet: press F6, or the button below.");
      next.setText("");
      getChildren().setAll(words);
      return;
    }
    CheckVerdict verdict = check.verdict();
    switch (verdict.kind()) {
      case HOLDS -> show("sound", Sign.TICK, "Holds");
      case FAULTY -> show("leak", Sign.DROP, "Not sound");
      case CANNOT_SAY -> show("open", Sign.QUESTION, "Not settled");
    }
    sentence.setText(verdict.words().in(model.unit().getValue()));
    next.setText(verdict.next().in(model.unit().getValue()));
  }

  private void show(String style, Sign sign, String kind) {
    getStyleClass().add(style);
    word.setText(kind);
    getChildren().setAll(sign.node(), word, words);
  }
}
