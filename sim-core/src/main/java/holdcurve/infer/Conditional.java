package holdcurve.infer;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The posterior of coordinates x in which curves are linear, with the sampled coordinates fixed.
 *
 * @param mean posterior mean of x [-]
 * @param factor Cholesky factorisation of the posterior precision
 * @param logMarginal log likelihood with x integrated out [nat]
 */
record Conditional(double[] mean, CholeskyDecomposition factor, double logMarginal) {
  /**
   * A draw from the posterior of x.
   *
   * @param normal independent standard-normal numbers, as many as x
   */
  double[] draw(double[] normal) {
    RealMatrix upper = factor.getLT();
    int m = normal.length;
    double[] z = new double[m];
    for (int i = m - 1; i >= 0; i--) {
      double sum = normal[i];
      for (int k = i + 1; k < m; k++) {
        sum -= upper.getEntry(i, k) * z[k];
      }
      z[i] = sum / upper.getEntry(i, i);
    }
    for (int i = 0; i < m; i++) {
      z[i] += mean[i];
    }
    return z;
  }
}
