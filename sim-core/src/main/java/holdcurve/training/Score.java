package holdcurve.training;

import java.util.Set;

/**
 * What a belief was worth, and the time it took.
 *
 * @param certainty 100 for being sure of the right answer, 0 for knowing nothing and saying so,
 *     below 0 for being sure of a wrong one
 * @param time points taken off for time spent
 */
public record Score(double certainty, double time) {
  /** Points that using up all the time costs. */
  private static final double TIME = 20;

  /**
   * By the quadratic rule (Brier, Mon. Weather Rev. 78 (1950) 1), scaled so that an even spread
   * scores nothing. No one can expect to score better than by saying what they really think.
   *
   * @param belief of the learner, over all answers
   * @param right answers that count as one and the same: no step of the exercise tells them apart
   * @param even the belief of one who knows nothing
   * @param used share of the time that was spent [-]
   */
  public static Score of(StatedOdds belief, Set<String> right, StatedOdds even, double used) {
    double certainty = 100 * (1 - error(belief, right) / error(even, right));
    return new Score(certainty, TIME * Math.min(1, Math.max(0, used)));
  }

  private static double error(StatedOdds belief, Set<String> right) {
    double miss = 1 - belief.of(right);
    double error = miss * miss;
    for (var one : belief.shares().entrySet()) {
      error += right.contains(one.getKey()) ? 0 : one.getValue() * one.getValue();
    }
    return error;
  }

  /** What stands in the list: never below 0. */
  public double total() {
    return Math.max(0, certainty - time);
  }
}
