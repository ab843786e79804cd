package holdcurve.physics.ode;

/**
 * LU factors of one small dense matrix, used over and over without allocating.
 *
 * <p>Rows carry different units (Pa/s beside m³/s), so partial pivoting compares entries only after
 * each row is divided by the scale of its unknown; comparing raw entries lets the choice of units
 * pick the pivots and loses the accuracy that a method without iterative repair depends on.
 */
final class EquilibratedLu {
  private final int n;
  private final double[][] rows;
  private final int[] order;
  private final double[] weight;
  private final double[] inversePivot;
  private final double[] solution;
  private int singularColumn = -1;

  EquilibratedLu(int dimension) {
    n = dimension;
    rows = new double[n][n];
    order = new int[n];
    weight = new double[n];
    inversePivot = new double[n];
    solution = new double[n];
  }

  /**
   * Factors shift·I − jacobian.
   *
   * @param shift 1/(hγ) [1/s]
   * @param scale positive size of each unknown, in the unit of its row times seconds
   * @return false if no finite pivot other than zero was found; see {@link #singularColumn}
   */
  boolean factor(double shift, double[][] jacobian, double[] scale) {
    load(shift, jacobian, scale);
    singularColumn = -1;
    for (int k = 0; k < n; k++) {
      if (!choosePivot(k)) {
        singularColumn = k;
        return false;
      }
      eliminate(k);
    }
    return true;
  }

  private void load(double shift, double[][] jacobian, double[] scale) {
    for (int i = 0; i < n; i++) {
      double[] row = rows[i];
      double[] source = jacobian[i];
      for (int j = 0; j < n; j++) {
        row[j] = -source[j];
      }
      row[i] += shift;
      order[i] = i;
      weight[i] = 1 / scale[i];
    }
  }

  private boolean choosePivot(int k) {
    int best = k;
    double largest = Math.abs(rows[k][k]) * weight[k];
    for (int i = k + 1; i < n; i++) {
      double size = Math.abs(rows[i][k]) * weight[i];
      if (size > largest) {
        largest = size;
        best = i;
      }
    }
    if (!(largest > 0 && largest < Double.POSITIVE_INFINITY)) {
      return false;
    }
    if (best != k) {
      swap(best, k);
    }
    inversePivot[k] = 1 / rows[k][k];
    return true;
  }

  private void swap(int i, int k) {
    double[] row = rows[i];
    rows[i] = rows[k];
    rows[k] = row;
    int source = order[i];
    order[i] = order[k];
    order[k] = source;
    double rowWeight = weight[i];
    weight[i] = weight[k];
    weight[k] = rowWeight;
  }

  private void eliminate(int k) {
    double[] pivot = rows[k];
    for (int i = k + 1; i < n; i++) {
      double[] row = rows[i];
      if (row[k] != 0) {
        double factor = row[k] * inversePivot[k];
        row[k] = factor;
        for (int j = k + 1; j < n; j++) {
          row[j] -= factor * pivot[j];
        }
      }
    }
  }

  /** Replaces the right side b by the solution. */
  void solve(double[] b) {
    double[] x = solution;
    for (int i = 0; i < n; i++) {
      double[] row = rows[i];
      double sum = b[order[i]];
      for (int j = 0; j < i; j++) {
        sum -= row[j] * x[j];
      }
      x[i] = sum;
    }
    for (int i = n - 1; i >= 0; i--) {
      double[] row = rows[i];
      double sum = x[i];
      for (int j = i + 1; j < n; j++) {
        sum -= row[j] * b[j];
      }
      b[i] = sum * inversePivot[i];
    }
  }

  /** Solves for right sides that lie {@link SideBySide}. */
  void solve(double[] b, int stride) {
    double[] column = new double[n];
    for (int k = 0; k < stride; k++) {
      for (int i = 0; i < n; i++) {
        column[i] = b[i * stride + k];
      }
      solve(column);
      for (int i = 0; i < n; i++) {
        b[i * stride + k] = column[i];
      }
    }
  }

  /** The column in which the last factorization found no pivot; -1 if it went through. */
  int singularColumn() {
    return singularColumn;
  }
}
