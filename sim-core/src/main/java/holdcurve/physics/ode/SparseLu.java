package holdcurve.physics.ode;

/**
 * LU factors that touch only the entries that can differ from zero, with the diagonal as pivots.
 * Circuits give such matrices: most unknowns meet two or three others, and storage makes the
 * diagonal large. Where it isn't large enough for a stable elimination, {@link #factor} says so and
 * the caller pivots.
 *
 * <p>Stored as L · D · U with ones on the diagonals of L and U, so that a solve is three flat
 * loops.
 */
final class SparseLu {
  /**
   * Largest multiplier, in units of the scales, that still counts as stable; partial pivoting has
   * 1.
   */
  private static final double LARGEST_MULTIPLIER = 10;

  private final int n;
  private final double[] work;
  private final double[] inversePivot;
  private SparsePattern pattern;
  private double[] lower;
  private double[] upper;

  SparseLu(int dimension) {
    n = dimension;
    work = new double[n * n];
    inversePivot = new double[n];
  }

  /** Prepares for matrices of a pattern. */
  void use(SparsePattern pattern) {
    this.pattern = pattern;
    if (lower == null || lower.length < pattern.lowerRow.length) {
      lower = new double[pattern.lowerRow.length];
    }
    if (upper == null || upper.length < pattern.upperRow.length) {
      upper = new double[pattern.upperRow.length];
    }
  }

  /**
   * Factors shift·I − jacobian. Long because the two running ends belong to one loop.
   *
   * @param scale positive size of each unknown
   * @return false if a pivot is too small or a value is not finite
   */
  boolean factor(double shift, double[][] jacobian, double[] scale) {
    load(shift, jacobian);
    int lowerStart = 0;
    int upperEnd = pattern.upperRow.length;
    for (int k : pattern.order) {
      int lowerEnd = lowerStart + pattern.belowCount[k];
      int upperStart = upperEnd - pattern.rightCount[k];
      if (!invertPivot(k)) {
        return false;
      }
      for (int e = lowerStart; e < lowerEnd; e++) {
        if (!eliminate(e, k, upperStart, upperEnd, scale)) {
          return false;
        }
      }
      for (int u = upperStart; u < upperEnd; u++) {
        upper[u] = work[k * n + pattern.upperColumn[u]] * inversePivot[k];
      }
      lowerStart = lowerEnd;
      upperEnd = upperStart;
    }
    return true;
  }

  private boolean invertPivot(int k) {
    double inverse = 1 / work[k * n + k];
    inversePivot[k] = inverse;
    return inverse != 0 && Math.abs(inverse) < Double.POSITIVE_INFINITY;
  }

  private void load(double shift, double[][] jacobian) {
    for (int place : pattern.places) {
      work[place] = -jacobian[place / n][place % n];
    }
    for (int i = 0; i < n; i++) {
      work[i * (n + 1)] += shift;
    }
  }

  private boolean eliminate(int e, int k, int upperStart, int upperEnd, double[] scale) {
    int i = pattern.lowerRow[e];
    double factor = work[i * n + k] * inversePivot[k];
    lower[pattern.lowerPlace[e]] = factor;
    for (int u = upperStart; u < upperEnd; u++) {
      int j = pattern.upperColumn[u];
      work[i * n + j] -= factor * work[k * n + j];
    }
    return Math.abs(factor) * scale[k] <= LARGEST_MULTIPLIER * scale[i];
  }

  /** Replaces the right side b by the solution. */
  void solve(double[] b) {
    int[] columns = pattern.lowerColumnByRow;
    int e = 0;
    for (int k : pattern.order) {
      double sum = b[k];
      for (int end = e + pattern.leftCount[k]; e < end; e++) {
        sum -= lower[e] * b[columns[e]];
      }
      b[k] = sum;
    }
    columns = pattern.upperColumn;
    e = 0;
    for (int place = n - 1; place >= 0; place--) {
      int k = pattern.order[place];
      double sum = b[k] * inversePivot[k];
      for (int end = e + pattern.rightCount[k]; e < end; e++) {
        sum -= upper[e] * b[columns[e]];
      }
      b[k] = sum;
    }
  }

  /** Solves for right sides that lie {@link SideBySide}. */
  void solve(double[] b, int stride) {
    int[] columns = pattern.lowerColumnByRow;
    int start = 0;
    for (int k : pattern.order) {
      int end = start + pattern.leftCount[k];
      if (end > start) {
        SideBySide.reduce(b, k, 1, lower, columns, start, end, stride);
      }
      start = end;
    }
    columns = pattern.upperColumn;
    start = 0;
    for (int place = n - 1; place >= 0; place--) {
      int k = pattern.order[place];
      int end = start + pattern.rightCount[k];
      SideBySide.reduce(b, k, inversePivot[k], upper, columns, start, end, stride);
      start = end;
    }
  }
}
