package holdcurve.infer;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The posterior of coordinates x in which curves are linear, with the sampled coordinates fixed.
 *
 * @param from where the curves were looked at [-]
 * @param mean posterior mean of x [-]
 * @param factor Cholesky factorisation of the posterior precision
 * @param logMarginal log likelihood with x integrated out [nat]
 * @param rise of the log posterior from there to the mean, as straight curves promise it [nat]
 */
record Conditional(
    double[] from, double[] mean, CholeskyDecomposition factor, double logMarginal, double rise) {
  /**
   * The same with the mean only so far away that the promised rise is {@code most}, and no more of
   * it in the marginal.
   */
  Conditional believed(double most) {
    if (rise <= most) {
      return this;
    }
    double part = 1 - Math.sqrt(1 - most / rise);
    double[] nearer = from.clone();
    for (int k = 0; k < nearer.length; k++) {
      nearer[k] += part * (mean[k] - from[k]);
    }
    return new Conditional(from, nearer, factor, logMarginal - (rise - most), most);
  }

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
