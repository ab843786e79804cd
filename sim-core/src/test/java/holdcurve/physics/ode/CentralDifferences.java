package holdcurve.physics.ode;

/** A Jacobian by central differences, to check analytic ones. */
final class CentralDifferences {
  private static final double STEP = 1e-5;

  private CentralDifferences() {}

  static double[][] jacobian(StiffEquations equations, double[] y) {
    int n = y.length;
    double[][] jacobian = new double[n][n];
    for (int j = 0; j < n; j++) {
      double[] above = slope(equations, y, j, STEP);
      double[] below = slope(equations, y, j, -STEP);
      for (int i = 0; i < n; i++) {
        jacobian[i][j] = (above[i] - below[i]) / (2 * STEP);
      }
    }
    return jacobian;
  }

  private static double[] slope(StiffEquations equations, double[] y, int j, double shift) {
    double[] point = y.clone();
    point[j] += shift;
    double[] slope = new double[y.length];
    equations.computeDerivatives(0, point, slope);
    return slope;
  }
}
