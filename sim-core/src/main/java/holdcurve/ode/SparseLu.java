package holdcurve.ode;

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
    for (int i = 0; i < n; i++) {
      double[] source = jacobian[i];
      int row = i * n;
      for (int j = 0; j < n; j++) {
        work[row + j] = -source[j];
      }
      work[row + i] += shift;
    }
  }

  private boolean eliminate(int e, int k, int upperStart, int upperEnd, double[] scale) {
    int i = pattern.lowerRow[e];
    double factor = work[i * n + k] * inversePivot[k];
    lower[e] = factor;
    for (int u = upperStart; u < upperEnd; u++) {
      int j = pattern.upperColumn[u];
      work[i * n + j] -= factor * work[k * n + j];
    }
    return Math.abs(factor) * scale[k] <= LARGEST_MULTIPLIER * scale[i];
  }

  /** Replaces the right side b by the solution. */
  void solve(double[] b) {
    int[] rows = pattern.lowerRow;
    int[] columns = pattern.lowerColumn;
    double[] values = lower;
    for (int e = 0; e < rows.length; e++) {
      b[rows[e]] -= values[e] * b[columns[e]];
    }
    for (int k = 0; k < b.length; k++) {
      b[k] *= inversePivot[k];
    }
    rows = pattern.upperRow;
    columns = pattern.upperColumn;
    values = upper;
    for (int e = 0; e < rows.length; e++) {
      b[rows[e]] -= values[e] * b[columns[e]];
    }
  }
}
