package holdcurve.inference.runup;

/** Linear equations of two or three unknowns, solved on the spot. */
final class SmallSystem {
  private SmallSystem() {}

  /**
   * @param a rows of the matrix, each with its right side behind it; changed
   */
  static double[] solve(double[][] a) {
    int n = a.length;
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        pivot = Math.abs(a[i][k]) > Math.abs(a[pivot][k]) ? i : pivot;
      }
      double[] row = a[pivot];
      a[pivot] = a[k];
      a[k] = row;
      for (int i = k + 1; i < n; i++) {
        double factor = a[i][k] / row[k];
        for (int j = k; j <= n; j++) {
          a[i][j] -= factor * row[j];
        }
      }
    }
    double[] x = new double[n];
    for (int k = n - 1; k >= 0; k--) {
      double rest = a[k][n];
      for (int j = k + 1; j < n; j++) {
        rest -= a[k][j] * x[j];
      }
      x[k] = rest / a[k][k];
    }
    return x;
  }
}
