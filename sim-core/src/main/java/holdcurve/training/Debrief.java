package holdcurve.training;

import holdcurve.common.message.Message;
import java.util.List;
import java.util.Set;

/**
 * What a session comes to, once it is over.
 *
 * @param truth what was wrong
 * @param right ids of the answers that count as right: no step of the exercise tells them apart
 * @param named the answer that the learner was surest of
 * @param lines one a step
 * @param answer the learner's last belief in the right answer [-]
 * @param score what it was worth
 * @param contrast how the answer named would have looked instead; empty if it was right
 */
public record Debrief(
    PossibleAnswers.Suspicion truth,
    Set<String> right,
    PossibleAnswers.Suspicion named,
    List<Line> lines,
    double answer,
    Score score,
    List<Contrast> contrast) {
  /** Below this a step has told nothing [bit]. */
  private static final double NOTHING = 0.1;

  /**
   * One step.
   *
   * @param step what was done
   * @param came what came of it, in words
   * @param learner what the learner gave the right answer before it [-]
   * @param evidence what all evidence up to and with this step gives the right answer [-]
   * @param leading what the evidence then points at
   * @param bits how much the step told [bit]
   */
  public record Line(
      Step step, Message came, double learner, double evidence, String leading, double bits) {
    /** Whether it told nothing. */
    public boolean isWasted() {
      return bits < NOTHING;
    }
  }

  /**
   * A hold as it was, and as it would have been.
   *
   * @param step the hold
   * @param was last reading [Pa gauge]
   * @param would last reading if the answer named were true [Pa gauge]
   */
  public record Contrast(Step.Hold step, double was, double would) {}

  public Debrief {
    right = Set.copyOf(right);
    lines = List.copyOf(lines);
    contrast = List.copyOf(contrast);
  }

  /** Whether the learner was surest of the right answer. */
  public boolean isRight() {
    return right.contains(named.id());
  }

  /** Whether there were several faults and the learner was surest of one of them. */
  public boolean isPartOfTruth() {
    List<String> faults = List.of(truth.id().split("\\+"));
    return faults.size() > 1 && faults.contains(named.id());
  }
}
