package holdcurve.ui.window.suspects;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Verdict;
import holdcurve.ui.window.frame.Sign;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The answer in one sentence, with a sign and a word for its kind. */
final class VerdictBar extends HBox {
  /** Longer ones are written smaller: the plot below needs the room [letters]. */
  private static final int LONG = 160;

  private final SuspectsModel model;
  private final WayOn wayOn;
  private final Label word = new Label();
  private final Label sentence = new Label();
  private final Label next = new Label();
  private final VBox words = new VBox(sentence, next);

  /**
   * @param wayOn leads on from it
   */
  VerdictBar(SuspectsModel model, WayOn wayOn) {
    this.model = model;
    this.wayOn = wayOn;
    sentence.setMaxWidth(Double.MAX_VALUE);
    getStyleClass().add("hc-verdict");
    setId("verdict");
    word.getStyleClass().add("hc-word");
    word.setMinWidth(Region.USE_PREF_SIZE);
    sentence.getStyleClass().add("hc-sentence");
    for (Label label : List.of(sentence, next)) {
      label.setWrapText(true);
      label.setMinHeight(Region.USE_PREF_SIZE);
    }
    next.setId("do-next");
    next.managedProperty().bind(next.textProperty().isNotEmpty());
    HBox.setHgrow(words, Priority.ALWAYS);
    model.ranking().addListener((property, before, now) -> show(now));
    model.unit().addListener((property, before, now) -> show(model.ranking().getValue()));
    show(model.ranking().getValue());
  }

  private void show(Ranking ranking) {
    getStyleClass().setAll("hc-verdict");
    setVisible(ranking != null);
    setManaged(ranking != null);
    if (ranking == null) {
      return;
    }
    Verdict verdict = ranking.verdict();
    switch (verdict.kind()) {
      case LEAK -> show("leak", Sign.DROP, "Leak");
      case FAULT -> show("leak", Sign.CROSS, "Fault");
      case SOUND -> show("sound", Sign.TICK, "Sound");
      case OPEN -> show("open", Sign.QUESTION, "Not settled");
      case UNEXPLAINED -> show("unexplained", Sign.CROSS, "Unexplained");
    }
    sentence.setText(verdict.words().in(model.unit().getValue()));
    String step = ranking.diagnosis().next().words().in(model.unit().getValue());
    next.setText(step.isEmpty() ? "" : "Do next: " + step);
    if (sentence.getText().length() > LONG) {
      getStyleClass().add("hc-long");
    }
  }

  private void show(String style, Sign sign, String kind) {
    getStyleClass().add(style);
    word.setText(kind);
    getChildren().setAll(sign.node(), word, words, wayOn);
  }
}
