package holdcurve.infer;

/**
 * Factor L of a small symmetric positive matrix, L Lᵀ. Asked for at every draw, so it makes no
 * copies; the library's makes four.
 */
final class Cholesky {
  private final double[][] lower;

  private Cholesky(double[][] lower) {
    this.lower = lower;
  }

  /**
   * @param matrix its lower triangle is read
   * @param raised added to the diagonal
   * @throws ArithmeticException if the matrix isn't positive
   */
  static Cholesky of(double[][] matrix, double raised) {
    int n = matrix.length;
    double[][] lower = new double[n][];
    for (int i = 0; i < n; i++) {
      double[] row = new double[i + 1];
      lower[i] = row;
      for (int j = 0; j < i; j++) {
        row[j] = (matrix[i][j] - product(row, lower[j], j)) / lower[j][j];
      }
      double square = matrix[i][i] + raised - product(row, row, i);
      if (!(square > 0)) {
        throw new ArithmeticException("matrix not positive: pivot " + square + " in row " + i);
      }
      row[i] = Math.sqrt(square);
    }
    return new Cholesky(lower);
  }

  private static double product(double[] a, double[] b, int count) {
    double sum = 0;
    for (int k = 0; k < count; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }

  /** Log determinant of the matrix. */
  double logDeterminant() {
    double sum = 0;
    for (int j = 0; j < lower.length; j++) {
      sum += 2 * Math.log(lower[j][j]);
    }
    return sum;
  }

  /** The solution x of L Lᵀ x = b. */
  double[] solve(double[] b) {
    double[] x = b.clone();
    for (int i = 0; i < x.length; i++) {
      x[i] = (x[i] - product(lower[i], x, i)) / lower[i][i];
    }
    return backward(x);
  }

  /** The solution x of Lᵀ x = b, in the place of b. */
  double[] backward(double[] b) {
    for (int i = b.length - 1; i >= 0; i--) {
      b[i] /= lower[i][i];
      for (int j = 0; j < i; j++) {
        b[j] -= lower[i][j] * b[i];
      }
    }
    return b;
  }
}
