package holdcurve.evidence;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Levenberg–Marquardt on the negative log posterior, with the Gauss–Newton matrix JᵀJ + I of the
 * stacked residuals [r(u); u] as curvature and the gradient of the true log likelihood.
 *
 * <p>The prior gives the natural metric, so the damping is a multiple of the identity, and the
 * matrix is never singular: normal equations are safe here. Damping is updated as in Madsen,
 * Nielsen and Tingleff, "Methods for non-linear least squares problems" (Technical University of
 * Denmark, 2004), algorithm 3.16. Written here because the likelihood call is the dear part: a
 * search that runs into a known mode's neighbourhood stops, failed points are merely refused steps,
 * and likelihoods that aren't sums of squares are allowed.
 */
final class DampedGaussNewton {
  private static final int ITERATIONS = 40;

  /** Predicted decrease of the negative log posterior at which the search ends [nat]. */
  private static final double TOLERANCE = 1e-4;

  private static final double SAME_MODE = 0.3;

  private final CountedLikelihood likelihood;
  private final List<Mode> known;

  private double[] u;
  private double[] residuals;
  private double logLikelihood;
  private double damping = 1;
  private double growth = 2;

  DampedGaussNewton(CountedLikelihood likelihood, List<Mode> known) {
    this.likelihood = likelihood;
    this.known = known;
  }

  /**
   * The mode reached from a start; null when the model fails at the start or has no finite slope at
   * the end, or when the mode is known.
   */
  Mode search(double[] start) {
    moveTo(start, new double[likelihood.residualForm().residualCount()]);
    if (!Double.isFinite(objective(residuals, logLikelihood, u))) {
      return null;
    }
    for (int iteration = 0; iteration < ITERATIONS; iteration++) {
      Local local = local();
      RealVector newton = local.step(0);
      if (isKnown(newton)) {
        return null;
      }
      if (local.predictedDecrease(newton, 0) < TOLERANCE) {
        return mode(local, true);
      }
      if (!improve(local)) {
        return mode(local, false);
      }
    }
    return mode(local(), false);
  }

  private void moveTo(double[] place, double[] newResiduals) {
    u = place.clone();
    residuals = newResiduals;
    logLikelihood = likelihood.residuals(u, residuals);
  }

  private Local local() {
    return new Local(ResidualSlope.at(likelihood, u, residuals, logLikelihood), residuals, u);
  }

  private boolean isKnown(RealVector newton) {
    double[] aim = new ArrayRealVector(u, false).add(newton).toArray();
    return known.stream().anyMatch(mode -> mode.distance(aim) < SAME_MODE);
  }

  /** Raises the damping until a step goes downhill; false when none does. */
  private boolean improve(Local local) {
    double before = objective(residuals, logLikelihood, u);
    for (int attempt = 0; attempt < 12; attempt++) {
      RealVector step = local.step(damping);
      double[] trial = new ArrayRealVector(u, false).add(step).toArray();
      double[] there = new double[residuals.length];
      double trialLog = likelihood.residuals(trial, there);
      double decrease = before - objective(there, trialLog, trial);
      double gain = decrease / local.predictedDecrease(step, damping);
      if (gain > 0) {
        accept(trial, there, trialLog, gain);
        return true;
      }
      damping *= growth;
      growth *= 2;
    }
    return false;
  }

  private void accept(double[] trial, double[] there, double trialLog, double gain) {
    u = trial;
    residuals = there;
    logLikelihood = trialLog;
    damping *= Math.max(1.0 / 10, 1 - Math.pow(2 * gain - 1, 3));
    growth = 2;
  }

  /** Negative log posterior [nat]; infinite where the model fails. */
  private static double objective(double[] residuals, double logLikelihood, double[] u) {
    boolean failed = !Double.isFinite(LogSum.squaredNorm(residuals));
    return failed ? Double.POSITIVE_INFINITY : 0.5 * LogSum.squaredNorm(u) - logLikelihood;
  }

  private Mode mode(Local local, boolean converged) {
    if (!Double.isFinite(local.hessian.getFrobeniusNorm())) {
      return null;
    }
    return new Mode(
        u.clone(),
        logLikelihood,
        local.hessian.getData(),
        Gaussians.factor(local.hessian.getData()),
        converged);
  }

  /** Quadratic model of the negative log posterior at one place. */
  private static final class Local {
    private final RealMatrix hessian;
    private final RealVector gradient;

    Local(ResidualSlope slope, double[] residuals, double[] u) {
      RealMatrix matrix = new Array2DRowRealMatrix(slope.jacobian(), false);
      hessian = new Array2DRowRealMatrix(slope.hessian(), false);
      gradient =
          new ArrayRealVector(matrix.preMultiply(residuals), false)
              .add(new ArrayRealVector(slope.restGradient(), false))
              .add(new ArrayRealVector(u, false));
    }

    RealVector step(double damping) {
      RealMatrix damped = hessian.copy();
      for (int i = 0; i < gradient.getDimension(); i++) {
        damped.addToEntry(i, i, damping);
      }
      return Gaussians.decompose(damped.getData()).getSolver().solve(gradient.mapMultiply(-1));
    }

    /** Decrease of the quadratic model along a damped step, always positive [nat]. */
    double predictedDecrease(RealVector step, double damping) {
      return 0.5 * (damping * step.dotProduct(step) - step.dotProduct(gradient));
    }
  }
}
