package holdcurve.ui.window.holdtests;

import holdcurve.ui.window.frame.Primary;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What can be said so far: a sign, a word and a sentence. */
final class JudgementBar extends HBox {
  private final Label word = new Label();
  private final Label sentence = new Label();
  private final Button rank = new Button("Rank the suspects (F5)");

  /**
   * @param rank ranks what was read
   */
  JudgementBar(HoldTestsModel model, Runnable rank) {
    setId("judgement");
    word.getStyleClass().add("hc-word");
    word.setMinWidth(Region.USE_PREF_SIZE);
    sentence.setWrapText(true);
    sentence.setMinHeight(Region.USE_PREF_SIZE);
    sentence.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(sentence, Priority.ALWAYS);
    this.rank.setId("rank");
    this.rank.setMinWidth(USE_PREF_SIZE);
    this.rank.setOnAction(event -> rank.run());
    Primary.when(model.rankable(), this.rank);
    model.judgementProperty().addListener((property, before, now) -> show(now));
    show(model.judgementProperty().get());
  }

  private void show(JudgementWords words) {
    setVisible(words != null);
    if (words != null) {
      getStyleClass().setAll("hc-verdict", words.style());
      word.setText(words.word());
      sentence.setText(words.sentence());
      getChildren().setAll(words.sign().node(), word, sentence, rank);
    }
  }
}
