package holdcurve.physics.network;

import holdcurve.oracle.Near;

/** Partial derivatives of rates by differences, to check analytic ones. */
final class DifferencedRates {
  /** Collects rates at a state. */
  interface Rates {
    void at(double[] y, double[] rates);
  }

  private DifferencedRates() {}

  /**
   * Derivatives by the five-point rule, with steps far below the width of any smoothing: 0.05 Pa
   * for a pressure, 1 mm³ for a volume, 0.01 K for a temperature.
   */
  static double[][] jacobian(Rates rates, NetworkLayout layout, double[] y) {
    int n = y.length;
    double[][] jacobian = new double[n][n];
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        int row = i;
        int column = j;
        jacobian[i][j] =
            Near.derivative(x -> moved(rates, y, column, x)[row], y[j], step(layout, j));
      }
    }
    return jacobian;
  }

  private static double step(NetworkLayout layout, int row) {
    double scale = layout.scales()[row];
    return scale == 1e3 ? 0.05 : scale;
  }

  private static double[] moved(Rates rates, double[] y, int column, double value) {
    double[] point = y.clone();
    point[column] = value;
    double[] result = new double[y.length];
    rates.at(point, result);
    return result;
  }
}
