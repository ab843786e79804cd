package holdcurve.advice.plan;

/**
 * How much an outcome is expected to tell about which hypothesis is true.
 *
 * @param bits mutual information of hypothesis and outcome [bit]
 * @param error standard error of that, its bias included as far as it shows [bit]
 */
public record Information(double bits, double error) {
  static final Information NOTHING = new Information(0, 0);

  private static final double LN2 = Math.log(2);

  static double bits(double nats) {
    return nats / LN2;
  }

  /** Entropy of a distribution [bit]. */
  static double entropy(double[] p) {
    double sum = 0;
    for (double share : p) {
      sum -= share > 0 ? share * Math.log(share) : 0;
    }
    return bits(sum);
  }
}
