package holdcurve.advice.check;

import holdcurve.common.number.Interval;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How much is lost if something leaks, whichever it is: the suspects' leaks, each log-normal
 * through its middle and 90 % range, mixed by their probabilities. Of two faults together it counts
 * the first.
 */
final class LeakMixture {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** Half of the 90 % range of a standard-normal number [-]. */
  private static final double HALF_RANGE = NORMAL.inverseCumulativeProbability(0.95);

  /** Limits of the search [m³/s]. */
  private static final double LEAST = 1e-14;

  private static final double MOST = 1e-2;
  private static final int HALVINGS = 60;

  private record Share(double weight, double log, double deviation) {}

  private final List<Share> shares;
  private final double total;

  private LeakMixture(List<Share> shares) {
    this.shares = shares;
    total = shares.stream().mapToDouble(Share::weight).sum();
  }

  static LeakMixture of(Ranking ranking) {
    return new LeakMixture(
        ranking.suspects().stream()
            .filter(suspect -> suspect.probability() > 0 && suspect.leak().isPresent())
            .map(LeakMixture::share)
            .toList());
  }

  private static Share share(Suspect suspect) {
    Interval leak = suspect.leak().orElseThrow();
    double deviation = Math.log(leak.high() / leak.low()) / (2 * HALF_RANGE);
    return new Share(suspect.probability(), Math.log(leak.middle()), Math.max(deviation, 1e-3));
  }

  /** Probability that something leaks [-]. */
  double probability() {
    return total;
  }

  /** Leak at the test pressure [m³/s]; empty where no suspect leaks. */
  Optional<Interval> leak() {
    return total > 0
        ? Optional.of(new Interval(quantile(0.05), quantile(0.5), quantile(0.95)))
        : Optional.empty();
  }

  private double quantile(double share) {
    double low = Math.log(LEAST);
    double high = Math.log(MOST);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (below(middle) < share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.exp((low + high) / 2);
  }

  private double below(double log) {
    double sum = 0;
    for (Share share : shares) {
      sum += share.weight() * NORMAL.cumulativeProbability((log - share.log()) / share.deviation());
    }
    return sum / total;
  }
}
