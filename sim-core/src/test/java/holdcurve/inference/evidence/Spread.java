package holdcurve.inference.evidence;

/** Covariance of weighted points, kept positive definite. */
final class Spread {
  private Spread() {}

  /** Cholesky factor of the weighted covariance, the diagonal raised by a thousandth. */
  static double[][] factor(double[][] points, double[] weights) {
    int d = points[0].length;
    double[] mean = new double[d];
    for (int i = 0; i < points.length; i++) {
      for (int j = 0; j < d; j++) {
        mean[j] += weights[i] * points[i][j];
      }
    }
    double[][] covariance = new double[d][d];
    for (int i = 0; i < points.length; i++) {
      for (int j = 0; j < d; j++) {
        for (int k = 0; k < d; k++) {
          covariance[j][k] += weights[i] * (points[i][j] - mean[j]) * (points[i][k] - mean[k]);
        }
      }
    }
    for (int j = 0; j < d; j++) {
      covariance[j][j] = 1.001 * covariance[j][j] + 1e-12;
    }
    return Gaussians.factor(covariance);
  }
}
