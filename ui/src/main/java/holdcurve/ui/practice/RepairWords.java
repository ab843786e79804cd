package holdcurve.ui.practice;

import holdcurve.training.RepairScore;
import java.util.ArrayList;
import java.util.List;

/** What a learner's repairs were worth, in words for an apprentice. */
public final class RepairWords {
  private RepairWords() {}

  /** One paragraph a string. */
  public static List<String> of(RepairScore score) {
    List<String> text = new ArrayList<>();
    text.add(
        score.isCured()
            ? "The car is put right."
            : "The car would have come back: what you did does not put it right.");
    score.helped().forEach(words -> text.add("It helped. " + words));
    score
        .equivalent()
        .forEach(
            words -> text.add("Wrong part, though no test here could have told you. " + words));
    score.needless().forEach(words -> text.add("Paid for and not needed. " + words));
    score.missing().forEach(words -> text.add("Still to do. " + words));
    return text;
  }
}
