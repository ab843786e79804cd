package holdcurve.inference.fit;

import holdcurve.inference.noise.ReadingError;
import holdcurve.inference.noise.Scales;

/** Linear curves with readings of known scales: a Gaussian problem in the coordinates x. */
final class LinearGaussianProblem {
  private final NormalEquations sums;
  private final Scales scales;
  private final double[] shares;
  private final double[][] precision;
  private final Cholesky factor;
  private final double logDeterminant;

  /**
   * @param shares h_k of each shape of the model error, see {@link ReadingError}
   * @param precision lower triangle of the posterior precision; taken over
   */
  LinearGaussianProblem(
      NormalEquations sums, Scales scales, double[] shares, double[][] precision) {
    this.sums = sums;
    this.scales = scales;
    this.shares = shares;
    this.precision = precision;
    factor = Cholesky.of(precision, 0);
    logDeterminant = factor.logDeterminant();
  }

  Cholesky factor() {
    return factor;
  }

  /** Posterior precision of x, a copy with both triangles [-]. */
  double[][] precision() {
    double[][] both = new double[precision.length][precision.length];
    for (int j = 0; j < both.length; j++) {
      for (int k = 0; k <= j; k++) {
        both[j][k] = precision[j][k];
        both[k][j] = precision[j][k];
      }
    }
    return both;
  }

  /**
   * The posterior of x.
   *
   * @param residuals from the readings of curves at {@code x}, and residuals of side evidence
   * @param x coordinates where they were taken [-]
   */
  Conditional about(double[] x, double[] residuals) {
    return about(x, sums.projected(residuals));
  }

  /**
   * Likewise.
   *
   * @param projected of the residuals
   */
  Conditional about(double[] x, NormalEquations.Projected projected) {
    double[] gradient = gradient(x, projected);
    double[] step = factor.solve(gradient);
    double rise = 0;
    double[] mean = new double[x.length];
    for (int j = 0; j < x.length; j++) {
      mean[j] = x[j] - step[j];
      rise += 0.5 * step[j] * gradient[j];
    }
    double log =
        sums.logDensityAtZero(scales) - objective(x, projected) - 0.5 * logDeterminant + rise;
    return new Conditional(x.clone(), mean, log, rise);
  }

  /** Minus the log posterior density of x, constants left out [nat]. */
  double objective(double[] x, NormalEquations.Projected projected) {
    double misfit = sums.misfit(projected, scales, shares);
    for (double z : x) {
      misfit += z * z;
    }
    return 0.5 * misfit;
  }

  /**
   * A step downhill from {@code x}.
   *
   * @param damping raises the diagonal of the precision [-]
   */
  double[] step(double[] x, NormalEquations.Projected projected, double damping) {
    Cholesky damped = damping == 0 ? factor : Cholesky.of(precision, damping);
    double[] step = damped.solve(gradient(x, projected));
    for (int j = 0; j < step.length; j++) {
      step[j] = -step[j];
    }
    return step;
  }

  /** By how much the log posterior would rise along any step, by linear curves [nat]. */
  double rise(double[] x, NormalEquations.Projected projected, double[] step) {
    double[] gradient = gradient(x, projected);
    double along = 0;
    for (int j = 0; j < step.length; j++) {
      along -= gradient[j] * step[j];
    }
    return along - predictedRise(step);
  }

  /** By how much the log posterior would rise along an undamped {@link #step} [nat]. */
  double predictedRise(double[] step) {
    double sum = 0;
    for (int i = 0; i < step.length; i++) {
      for (int j = 0; j < i; j++) {
        sum += 2 * step[i] * precision[i][j] * step[j];
      }
      sum += step[i] * precision[i][i] * step[i];
    }
    return 0.5 * sum;
  }

  private double[] gradient(double[] x, NormalEquations.Projected projected) {
    double[] gradient = x.clone();
    sums.addGradient(projected, scales, shares, gradient);
    return gradient;
  }
}
