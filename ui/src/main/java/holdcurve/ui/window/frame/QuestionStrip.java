package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.QuestionModel;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Asks before something that a person put in would go. The safest answer has the keyboard. */
final class QuestionStrip extends HBox {
  private final QuestionModel model;

  QuestionStrip(QuestionModel model) {
    this.model = model;
    setId("question");
    getStyleClass().add("hc-rescue");
    model.askedProperty().addListener((property, before, now) -> show(now));
    show(model.askedProperty().get());
  }

  private void show(QuestionModel.Question question) {
    setVisible(question != null);
    setManaged(question != null);
    getChildren().clear();
    if (question == null) {
      return;
    }
    Label sentence = Texts.words(question.sentence());
    HBox.setHgrow(sentence, Priority.ALWAYS);
    sentence.setMaxWidth(Double.MAX_VALUE);
    List<Button> buttons = new ArrayList<>();
    question
        .answers()
        .forEach(answer -> buttons.add(button(answer.words(), () -> model.answer(answer))));
    buttons.add(button("Cancel (Esc)", model::stay));
    getChildren().setAll(Sign.QUESTION.node(), sentence);
    getChildren().addAll(buttons);
    Node safe = buttons.get(safe(question));
    Platform.runLater(safe::requestFocus);
  }

  /** The first answer by which nothing is lost; else that of leaving everything as it is. */
  private static int safe(QuestionModel.Question question) {
    int i = 0;
    while (i < question.answers().size() && !question.answers().get(i).safe()) {
      i++;
    }
    return i;
  }

  private static Button button(String text, Runnable what) {
    Button button = new Button(text);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> what.run());
    return button;
  }
}
