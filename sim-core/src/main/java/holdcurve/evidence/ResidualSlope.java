package holdcurve.evidence;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Slopes at one place: of the residuals, and of the part of −log L that ½‖r‖² doesn't hold (a
 * logarithm of a fitted scale, an outlier part). Both come from the same difference calls.
 *
 * @param jacobian dr_i/du_j, residuals by coordinates [-]
 * @param restGradient d(−log L − ½‖r‖²)/du_j [nat]
 */
record ResidualSlope(double[][] jacobian, double[] restGradient) {

  /**
   * @param likelihood a model with residuals
   * @param u place of the slopes [-]
   * @param residuals residuals at u [-]
   * @param logLikelihood log likelihood at u [nat]
   */
  static ResidualSlope at(
      CountedLikelihood likelihood, double[] u, double[] residuals, double logLikelihood) {
    ResidualSlope slope =
        new ResidualSlope(new double[residuals.length][u.length], new double[u.length]);
    if (!likelihood.jacobian(u, slope.jacobian)) {
      double step = likelihood.residualForm().differenceStep();
      double rest = rest(residuals, logLikelihood);
      for (int j = 0; j < u.length; j++) {
        double forward = step * Math.max(1, Math.abs(u[j]));
        if (!slope.oneSided(likelihood, u, residuals, rest, j, forward)) {
          slope.oneSided(likelihood, u, residuals, rest, j, -forward);
        }
      }
    }
    return slope;
  }

  /** Gauss–Newton Hessian of the negative log posterior, JᵀJ + I [-]. */
  double[][] hessian() {
    RealMatrix matrix = new Array2DRowRealMatrix(jacobian, false);
    double[][] product = matrix.transpose().multiply(matrix).getData();
    for (int i = 0; i < product.length; i++) {
      product[i][i] += 1;
    }
    return product;
  }

  private static double rest(double[] residuals, double logLikelihood) {
    return -logLikelihood - 0.5 * LogSum.squaredNorm(residuals);
  }

  /** False, with zero slopes, where the model fails at the moved point. */
  private boolean oneSided(
      CountedLikelihood likelihood,
      double[] u,
      double[] base,
      double baseRest,
      int j,
      double change) {
    double[] moved = u.clone();
    moved[j] += change;
    double run = moved[j] - u[j];
    double[] there = new double[base.length];
    double thereLog = likelihood.residuals(moved, there);
    double rest = rest(there, thereLog);
    boolean finite = Double.isFinite(rest);
    for (int i = 0; i < base.length; i++) {
      jacobian[i][j] = finite ? (there[i] - base[i]) / run : 0;
    }
    restGradient[j] = finite ? (rest - baseRest) / run : 0;
    return finite;
  }
}
