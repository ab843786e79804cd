package holdcurve.inference.noise;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * The shapes in which a slightly wrong model is off: the leading eigenvectors of a Gaussian process
 * with a squared-exponential kernel over log(1 + t/t₀), so that a model may be off quickly at first
 * and slowly later. Unit variance.
 */
public final class DiscrepancyBasis {
  /** t₀: below this, time counts as it is; above, its logarithm: assumed [s]. */
  private static final double WARP_TIME = 30;

  /** Correlation length on the warped axis: assumed [-]. */
  private static final double LENGTH = 0.8;

  /** Share of the variance that is kept [-]. */
  private static final double KEPT = 0.995;

  private static final int MOST = 10;

  /** How many times larger the error is where all pressure is gone, less one: assumed [-]. */
  private static final double GROWTH = 5;

  private DiscrepancyBasis() {}

  /**
   * The shapes for a log: a slightly wrong law or compliance puts a curve off in proportion to how
   * far it has fallen, beside what it is off from the start.
   *
   * @param time of the points [s]
   * @param pressure as read there [Pa]
   */
  public static double[][] at(double[] time, double[] pressure) {
    double[][] basis = at(time);
    for (int i = 0; i < basis.length; i++) {
      double fallen = Math.abs(pressure[0] - pressure[i]) / Math.max(pressure[0], 1);
      for (int k = 0; k < basis[i].length; k++) {
        basis[i][k] *= 1 + GROWTH * fallen;
      }
    }
    return basis;
  }

  /**
   * @param time of the points [s]
   * @return one row a point, one column a shape; B Bᵀ is the correlation of the model's error
   */
  public static double[][] at(double[] time) {
    int n = time.length;
    double[][] kernel = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double distance = (warp(time[i]) - warp(time[j])) / LENGTH;
        kernel[i][j] = Math.exp(-distance * distance / 2);
      }
    }
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(kernel, false));
    double[] values = eigen.getRealEigenvalues();
    int kept = kept(values, n);
    double[][] basis = new double[n][kept];
    for (int k = 0; k < kept; k++) {
      double scale = Math.sqrt(values[k]);
      for (int i = 0; i < n; i++) {
        basis[i][k] = scale * eigen.getEigenvector(k).getEntry(i);
      }
    }
    return basis;
  }

  private static int kept(double[] descending, int n) {
    double sum = 0;
    for (int k = 0; k < Math.min(MOST, n); k++) {
      sum += descending[k];
      if (sum >= KEPT * n) {
        return k + 1;
      }
    }
    return Math.min(MOST, n);
  }

  private static double warp(double t) {
    return Math.log1p(t / WARP_TIME);
  }
}
