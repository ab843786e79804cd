package holdcurve.ui.window.job;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What the person at the window is asked before something of theirs would go. One at a time. */
public final class QuestionModel {
  /**
   * An answer.
   *
   * @param words on its button
   * @param then run when it is given
   * @param safe whether nothing can be lost by it
   */
  public record Answer(String words, Runnable then, boolean safe) {}

  /**
   * A question. Besides its answers there is always that of leaving everything as it is.
   *
   * @param answers beside that
   */
  public record Question(String sentence, List<Answer> answers) {
    public Question {
      answers = List.copyOf(answers);
    }
  }

  private final ReadOnlyObjectWrapper<Question> asked = new ReadOnlyObjectWrapper<>();

  /** Asks; what was asked before and not answered is left as it is. */
  public void ask(String sentence, Answer... answers) {
    asked.set(new Question(sentence, List.of(answers)));
  }

  /** Answers what is asked. */
  public void answer(Answer answer) {
    asked.set(null);
    answer.then().run();
  }

  /** Everything stays as it is. */
  public void stay() {
    asked.set(null);
  }

  /** What is asked; null for nothing. */
  public ReadOnlyObjectProperty<Question> askedProperty() {
    return asked.getReadOnlyProperty();
  }
}
