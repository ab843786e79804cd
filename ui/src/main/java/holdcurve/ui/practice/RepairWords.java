package holdcurve.ui.practice;

import holdcurve.training.RepairScore;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a learner's repairs were worth, in words for an apprentice. */
public final class RepairWords {
  private RepairWords() {}

  /** One paragraph a string. */
  public static List<String> of(RepairScore score) {
    List<String> text = new ArrayList<>();
    text.add(
        score.isCured()
            ? "What you did puts the car right."
            : "The car would have come back: what you did does not put it right.");
    score.helped().forEach(words -> text.add("It helped: " + words));
    score
        .wrongTwin()
        .forEach(
            words ->
                text.add(
                    "Not this time, but no step of this exercise could have told you: " + words));
    score.needless().forEach(words -> text.add("For nothing, and paid for: " + words));
    score.missing().forEach(words -> text.add("It would have needed: " + words));
    text.add(
        String.format(Locale.ROOT, "Repair: %.0f of %d points.", score.points(), RepairScore.MOST));
    return text;
  }
}
