package holdcurve.record.job;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Reads a needle as a person does: the gauge's own error once for all, a little unsteadiness, then
 * rounding to its steps.
 */
public final class EyeReadings {
  /** Unsteadiness of the eye as a share of the resolution: assumed [-]. */
  private static final double UNSTEADY = 0.3;

  private EyeReadings() {}

  /**
   * @param needle true needle positions [Pa gauge]
   * @param seed of the gauge's error and the eye's; the same seed reads the same
   * @return readings [Pa gauge], multiples of the resolution, none beyond the scale
   */
  public static double[] of(double[] needle, GaugeSpec gauge, long seed) {
    RandomGenerator random = new Well19937c(seed);
    double offset = gauge.accuracyClass() * gauge.range() * (2 * random.nextDouble() - 1);
    return of(needle, gauge, offset, random);
  }

  /**
   * @param needle true needle positions [Pa gauge]
   * @param offset the gauge's own error [Pa]
   * @param random the eye's unsteadiness
   * @return readings [Pa gauge], multiples of the resolution
   */
  public static double[] of(
      double[] needle, GaugeSpec gauge, double offset, RandomGenerator random) {
    double[] read = new double[needle.length];
    for (int i = 0; i < read.length; i++) {
      double seen = needle[i] + offset + UNSTEADY * gauge.resolution() * random.nextGaussian();
      double step = Math.rint(seen / gauge.resolution()) * gauge.resolution();
      read[i] = Math.min(Math.max(0, step), gauge.range());
    }
    return read;
  }
}
