package holdcurve.training;

import holdcurve.common.message.Message;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a session comes to, once it is over.
 *
 * @param truth what was wrong
 * @param right ids of the answers that count as right: no step of the exercise tells them apart
 * @param named the answer that the learner was surest of
 * @param lines one a step
 * @param answer the learner's last belief in the right answer [-]
 * @param supported what the learner's tests give the right answer [-]
 * @param score what it was worth
 * @param repair what the repairs chosen were worth; absent before they are
 * @param next what would have told most after the last step; absent where nothing would
 * @param explained whether any answer fits what was read
 */
public record Debrief(
    PossibleAnswers.Suspicion truth,
    Set<String> right,
    PossibleAnswers.Suspicion named,
    List<Line> lines,
    double answer,
    double supported,
    Score score,
    Optional<RepairScore> repair,
    Optional<Step> next,
    boolean explained) {
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
   * @param worth how well it was chosen
   * @param hold readings beside curves; absent for a step that is no hold
   */
  public record Line(
      Step step,
      Message came,
      double learner,
      double evidence,
      String leading,
      double bits,
      StepWorth worth,
      Optional<Curves> hold) {
    /** Whether it changed nothing of what was known. */
    public boolean isQuiet() {
      return bits < NOTHING;
    }
  }

  /**
   * A hold as it was read, and as faults show it.
   *
   * @param taken the hold with its readings
   * @param times since the pump stop [s]
   * @param truth what the needle showed [Pa gauge]
   * @param other what it would have shown with the answer named, at its usual size; with nothing
   *     wrong, if the answer is right [Pa gauge]
   */
  public record Curves(
      TrainingSession.Taken taken, double[] times, double[] truth, double[] other) {
    /** Where the two lie farthest apart: a place in {@link #times}. */
    public int farthest() {
      int at = 0;
      for (int i = 1; i < times.length; i++) {
        at = Math.abs(truth[i] - other[i]) > Math.abs(truth[at] - other[at]) ? i : at;
      }
      return at;
    }
  }

  public Debrief {
    right = Set.copyOf(right);
    lines = List.copyOf(lines);
  }

  /** The same once the car was repaired. */
  public Debrief repaired(RepairScore done) {
    return new Debrief(
        truth,
        right,
        named,
        lines,
        answer,
        supported,
        score.with(done, lines.isEmpty() ? 0 : supported),
        Optional.of(done),
        next,
        explained);
  }

  /** Minutes spent [min]. */
  public double minutes() {
    return lines.stream().mapToDouble(line -> line.step().minutes()).sum();
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
