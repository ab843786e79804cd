package holdcurve.ui.window.benchsheet;

import holdcurve.ui.window.frame.Sign;
import holdcurve.ui.window.frame.Texts;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The most important of what was found, with a sign and a word. */
final class VerdictStrip extends HBox {
  private final Label word = new Label();
  private final Label sentence = Texts.words("", "hc-sentence");

  VerdictStrip(String id) {
    setId(id);
    word.getStyleClass().add("hc-word");
    word.setMinWidth(USE_PREF_SIZE);
    HBox.setHgrow(sentence, Priority.ALWAYS);
  }

  /**
   * @param style class in the stylesheet: {@code sound}, {@code leak} or {@code open}
   */
  void show(String style, Sign sign, String kind, String said) {
    getStyleClass().setAll("hc-verdict", style);
    word.setText(kind);
    sentence.setText(said);
    getChildren().setAll(sign.node(), word, sentence);
  }
}
