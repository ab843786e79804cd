package holdcurve.inference.evidence;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Residuals that are, given the first coordinate, linear in each further one: (u_k − g_k(u_1))/s_k.
 * With curved g the posterior is a bent ridge. The inner integrals are Gaussian, so that the
 * evidence is one integral over u_1, done by the trapezoid rule (exact to rounding for such
 * integrands).
 */
final class RidgeModel implements LogLikelihood {
  private final DoubleUnaryOperator first;
  private final DoubleUnaryOperator[] ridge;
  private final double[] width;

  RidgeModel(DoubleUnaryOperator first, DoubleUnaryOperator[] ridge, double[] width) {
    this.first = first;
    this.ridge = ridge;
    this.width = width;
  }

  /** Four coordinates along a strongly bent, narrowing line. */
  static RidgeModel banana() {
    return new RidgeModel(
        t -> 0.6 * (t - 0.5),
        new DoubleUnaryOperator[] {t -> 1 - t * t, t -> 0.5 * t, t -> Math.sin(2 * t)},
        new double[] {0.25, 0.3, 0.5});
  }

  double logEvidence() {
    int n = 40_000;
    double h = 16.0 / n;
    double[] terms = new double[n + 1];
    Arrays.setAll(terms, i -> logIntegrand(-8 + h * i) + Math.log(h));
    return LogSum.of(terms);
  }

  private double logIntegrand(double t) {
    double r = first.applyAsDouble(t);
    double sum = -0.5 * (t * t + LogSum.LOG_TWO_PI + r * r);
    for (int k = 0; k < ridge.length; k++) {
      double variance = 1 + width[k] * width[k];
      double g = ridge[k].applyAsDouble(t);
      sum += Math.log(width[k]) - 0.5 * Math.log(variance) - 0.5 * g * g / variance;
    }
    return sum;
  }

  @Override
  public int dimension() {
    return 1 + ridge.length;
  }

  @Override
  public double logLikelihood(double[] u) {
    double[] out = new double[dimension()];
    out[0] = first.applyAsDouble(u[0]);
    for (int k = 0; k < ridge.length; k++) {
      out[k + 1] = (u[k + 1] - ridge[k].applyAsDouble(u[0])) / width[k];
    }
    return -0.5 * LogSum.squaredNorm(out);
  }
}
