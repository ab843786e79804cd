package holdcurve.inference.evidence;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.special.Erf;

/** Benchmarks with a uniform prior on a box, reached through the normal distribution function. */
final class BoxLikelihoods {
  private BoxLikelihoods() {}

  /** Two thin shells of radius 2 and width 0.1 in [−6, 6]^D (Feroz, Hobson and Bridges 2009). */
  static LogLikelihood shells(int dimension) {
    return onBox(
        dimension,
        -6,
        6,
        x -> LogSum.of(shell(x, 3.5), shell(x, -3.5)) - 0.5 * Math.log(2 * Math.PI * 0.01));
  }

  private static double shell(double[] x, double centre) {
    double square = LogSum.squaredNorm(x) - x[0] * x[0] + (x[0] - centre) * (x[0] - centre);
    return -Math.pow(Math.sqrt(square) - 2, 2) / 0.02;
  }

  /** (2 + cos(x/2) cos(y/2))⁵ on [0, 10π]² (Feroz, Hobson and Bridges 2009). */
  static LogLikelihood eggbox() {
    return onBox(2, 0, 10 * Math.PI, x -> Math.pow(2 + Math.cos(x[0] / 2) * Math.cos(x[1] / 2), 5));
  }

  private static LogLikelihood onBox(
      int dimension, double low, double high, ToDoubleFunction<double[]> logLikelihood) {
    return new LogLikelihood() {
      @Override
      public int dimension() {
        return dimension;
      }

      @Override
      public double logLikelihood(double[] u) {
        return logLikelihood.applyAsDouble(
            Arrays.stream(u)
                .map(z -> low + (high - low) * 0.5 * Erf.erfc(-z / Math.sqrt(2)))
                .toArray());
      }
    };
  }
}
