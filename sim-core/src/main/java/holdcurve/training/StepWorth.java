package holdcurve.training;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How well a step was chosen, by what was known before it.
 *
 * @param kind in a word
 * @param value 1 for the best there was, 0 for one that could tell nothing [-]
 * @param better what would have told more for its time; empty where nothing would
 */
public record StepWorth(Kind kind, double value, Optional<Step> better) {
  /** A step that is expected to tell less isn't worth its time [bit]. */
  static final double WORTHWHILE = 0.1;

  /** At this share of the best, a step is well chosen: assumed [-]. */
  private static final double GOOD = 0.5;

  /** Before the first hold nothing is planned; whatever else is begun with: assumed [-]. */
  private static final double NO_HOLD_YET = 0.5;

  /** How well a step was chosen. */
  public enum Kind {
    /** What the plan puts first, or as good. */
    BEST,
    GOOD,
    /** Another would have told more. */
    POOR,
    /** Enough was known. */
    NEEDLESS
  }

  /**
   * @param affordable steps for which there was time, this one among them
   * @param before what was known
   */
  static StepWorth of(Step step, List<Step> affordable, Evidence before) {
    List<Evidence.Worth> open =
        before.worth().stream().filter(one -> affordable.contains(one.step())).toList();
    if (open.isEmpty()) {
      return unplanned(step, affordable);
    }
    Step first = open.get(0).step();
    double most = open.stream().mapToDouble(Evidence.Worth::bits).max().orElse(0);
    double best = open.stream().mapToDouble(Evidence.Worth::rate).max().orElse(0);
    double share = best <= 0 ? 0 : before.bits(step) / step.minutes() / best;
    double value = (step.equals(first) ? 1 : share) * Math.min(1, most / WORTHWHILE);
    if (step.equals(first)) {
      return new StepWorth(Kind.BEST, value, Optional.empty());
    }
    if (most < WORTHWHILE) {
      return new StepWorth(Kind.NEEDLESS, value, Optional.empty());
    }
    Kind kind = share > 0.99 ? Kind.BEST : share >= GOOD ? Kind.GOOD : Kind.POOR;
    return new StepWorth(kind, value, kind == Kind.POOR ? Optional.of(first) : Optional.empty());
  }

  private static StepWorth unplanned(Step step, List<Step> affordable) {
    if (step instanceof Step.Hold) {
      return new StepWorth(Kind.BEST, 1, Optional.empty());
    }
    Optional<Step> hold =
        affordable.stream()
            .filter(Step.Hold.class::isInstance)
            .min(Comparator.comparingDouble(Step::minutes));
    return new StepWorth(Kind.GOOD, NO_HOLD_YET, hold);
  }
}
