package holdcurve.evidence;

import holdcurve.check.Cancellation;
import java.util.Arrays;

/** Counts calls, makes NaN an impossible point and remembers the best point seen. */
final class CountedLikelihood implements LogLikelihood {
  private final LogLikelihood inner;
  private long calls;
  private double best = Double.NEGATIVE_INFINITY;
  private double[] bestPoint;

  CountedLikelihood(LogLikelihood inner) {
    if (inner.dimension() < 1) {
      throw new IllegalArgumentException(
          "a likelihood needs at least 1 coordinate, got " + inner.dimension());
    }
    this.inner = inner;
    this.bestPoint = new double[inner.dimension()];
  }

  @Override
  public int dimension() {
    return inner.dimension();
  }

  @Override
  public double logLikelihood(double[] u) {
    Cancellation.check();
    ResidualLikelihood form = residualForm();
    return form == null
        ? note(u, inner.logLikelihood(u))
        : residuals(u, new double[form.residualCount()]);
  }

  /**
   * Residuals where the model has them; the caller has checked {@link #residualForm()}. A residual
   * that isn't finite makes the point impossible.
   */
  double residuals(double[] u, double[] out) {
    double value = residualForm().residuals(u, out);
    return note(u, Double.isFinite(LogSum.squaredNorm(out)) ? value : Double.NaN);
  }

  /** The wrapped likelihood as one with residuals, or null. */
  ResidualLikelihood residualForm() {
    return inner instanceof ResidualLikelihood form ? form : null;
  }

  /** The supplied Jacobian counts as one call. */
  boolean jacobian(double[] u, double[][] out) {
    boolean supplied = residualForm().jacobian(u, out);
    calls += supplied ? 1 : 0;
    return supplied;
  }

  long calls() {
    return calls;
  }

  double best() {
    return best;
  }

  double[] bestPoint() {
    return bestPoint.clone();
  }

  private double note(double[] u, double value) {
    calls++;
    if (value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          "log likelihood is +infinity nat at u = " + Arrays.toString(u));
    }
    if (value > best) {
      best = value;
      bestPoint = u.clone();
    }
    return Double.isNaN(value) ? Double.NEGATIVE_INFINITY : value;
  }
}
