package holdcurve.inference.answer;

import holdcurve.common.message.Message;
import holdcurve.record.job.PassMark;
import java.util.List;

/**
 * The answer about a circuit: what every command, the report, the window and practice say of a job.
 *
 * @param verdict the answer in one or two sentences
 * @param next what to do now
 * @param sound probability that nothing is wrong [-]
 * @param reasons why, in sentences, the weightiest first
 * @param marks the holds without clamps beside the pass limit
 * @param yardsticks what was read beside what should have been, in sentences
 * @param assumed what wasn't stated and matters, with what was assumed, most telling first
 */
public record Diagnosis(
    Verdict verdict,
    NextStep next,
    double sound,
    List<Message> reasons,
    List<PassMark> marks,
    List<Message> yardsticks,
    List<Message> assumed) {
  public Diagnosis {
    reasons = List.copyOf(reasons);
    marks = List.copyOf(marks);
    yardsticks = List.copyOf(yardsticks);
    assumed = List.copyOf(assumed);
  }

  /** A verdict with nothing beside it. */
  public static Diagnosis of(Verdict verdict, double sound) {
    NextStep none = new NextStep(NextStep.Kind.NONE, "", Message.plain(""), List.of());
    return new Diagnosis(verdict, none, sound, List.of(), List.of(), List.of(), List.of());
  }
}
