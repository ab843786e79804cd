package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.training.Debrief;
import holdcurve.training.Exercise;
import java.util.Locale;

/** Writes the debrief of an exercise as JSON. */
public final class DebriefWriter {
  /** Format and version that such files carry. */
  public static final String FORMAT = "holdcurve-debrief/2";

  private DebriefWriter() {}

  /** The debrief as JSON text of format {@value #FORMAT}. */
  public static String json(Exercise exercise, Debrief debrief) {
    ObjectNode root = JsonFiles.object();
    root.put("format", FORMAT);
    root.put("exercise", exercise.title());
    root.put("level", exercise.level());
    root.put("truth", debrief.truth().id());
    root.put("named", debrief.named().id());
    root.put("right", debrief.isRight());
    root.put("given_to_the_right_answer", JsonNumbers.rounded(debrief.answer()));
    root.put("tests_give_the_right_answer", JsonNumbers.rounded(debrief.supported()));
    ObjectNode score = root.putObject("score");
    score.put("total", JsonNumbers.rounded(debrief.score().total()));
    score.put("odds", JsonNumbers.rounded(debrief.score().odds()));
    score.put("odds_possible", JsonNumbers.rounded(debrief.score().possible()));
    score.put("tests", JsonNumbers.rounded(debrief.score().tests()));
    score.put("repair", JsonNumbers.rounded(debrief.score().repair()));
    ArrayNode steps = root.putArray("steps");
    debrief.lines().forEach(line -> add(steps.addObject(), line));
    debrief.next().ifPresent(step -> root.put("would_tell_most_next", step.words()));
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode node, Debrief.Line line) {
    node.put("step", line.step().words());
    node.put("minutes", JsonNumbers.rounded(line.step().minutes()));
    node.put("came", line.came().toString());
    node.put("learner_before", JsonNumbers.rounded(line.learner()));
    node.put("evidence_after", JsonNumbers.rounded(line.evidence()));
    node.put("points_at", line.leading());
    node.put("bits", JsonNumbers.rounded(line.bits()));
    node.put("choice", line.worth().kind().name().toLowerCase(Locale.ROOT));
    line.worth().better().ifPresent(better -> node.put("better", better.words()));
  }
}
