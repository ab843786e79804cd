package holdcurve.training;

import java.util.List;
import java.util.Optional;

/**
 * What the steps at a car support.
 *
 * @param odds of each answer, by the priors and everything found out
 * @param leading the likeliest answer in words
 * @param worth what each step of the exercise is expected to tell next, the plan's first choice
 *     first; empty where none can be planned
 * @param explained whether any answer fits what was read
 */
public record Evidence(StatedOdds odds, String leading, List<Worth> worth, boolean explained) {
  /**
   * @param bits it is expected to tell about which answer is right [bit]
   */
  public record Worth(Step step, double bits) {
    /** For the time it takes [bit/min]. */
    double rate() {
      return bits / step.minutes();
    }
  }

  public Evidence {
    worth = List.copyOf(worth);
  }

  /** What a step is expected to tell [bit]. */
  double bits(Step step) {
    return worth.stream()
        .filter(one -> one.step().equals(step))
        .mapToDouble(Worth::bits)
        .findFirst()
        .orElse(0);
  }

  /** The plan's first choice. */
  Optional<Step> first() {
    return worth.stream().map(Worth::step).findFirst();
  }
}
