package holdcurve.inference.fit;

import holdcurve.common.work.ComputationException;
import java.util.Arrays;

/**
 * Factor L of a small symmetric positive matrix, Lᵀ L. Asked for at every draw, so it makes one
 * copy; the library's makes four. The last coordinate goes first: those of one test are the last
 * and don't touch those of another, so most of what is usual to fill in stays zero and is passed
 * over.
 */
public final class Cholesky {
  private final double[][] lower;

  private Cholesky(double[][] lower) {
    this.lower = lower;
  }

  /**
   * @param matrix its lower triangle is read
   * @param raised added to the diagonal
   * @throws ComputationException if the matrix isn't positive
   */
  static Cholesky of(double[][] matrix, double raised) {
    double[][] lower = new double[matrix.length][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = Arrays.copyOf(matrix[i], i + 1);
      lower[i][i] += raised;
    }
    for (int i = lower.length - 1; i >= 0; i--) {
      scale(lower[i], i);
      for (int j = 0; j < i; j++) {
        subtract(lower[i][j], lower[i], lower[j], j + 1);
      }
    }
    return new Cholesky(lower);
  }

  private static void scale(double[] row, int i) {
    if (!(row[i] > 0)) {
      throw new ComputationException("matrix not positive: pivot " + row[i] + " in row " + i);
    }
    double root = Math.sqrt(row[i]);
    for (int k = 0; k < i; k++) {
      row[k] /= root;
    }
    row[i] = root;
  }

  private static void subtract(double factor, double[] row, double[] from, int count) {
    if (factor != 0) {
      for (int k = 0; k < count; k++) {
        from[k] -= factor * row[k];
      }
    }
  }

  /** Log determinant of the matrix. */
  double logDeterminant() {
    double sum = 0;
    for (int j = 0; j < lower.length; j++) {
      sum += 2 * Math.log(lower[j][j]);
    }
    return sum;
  }

  /** The solution x of Lᵀ L x = b. */
  double[] solve(double[] b) {
    double[] x = b.clone();
    for (int i = x.length - 1; i >= 0; i--) {
      x[i] /= lower[i][i];
      subtract(x[i], lower[i], x, i);
    }
    return forward(x);
  }

  /** Element (k, k) of the inverse of the matrix. */
  public double variance(int k) {
    double[] unit = new double[lower.length];
    unit[k] = 1;
    return solve(unit)[k];
  }

  /**
   * The solution x of L x = b, in the place of b: of independent standard-normal numbers it makes a
   * draw whose covariance is the inverse of the matrix.
   */
  public double[] forward(double[] b) {
    for (int i = 0; i < b.length; i++) {
      double sum = b[i];
      for (int k = 0; k < i; k++) {
        sum -= lower[i][k] * b[k];
      }
      b[i] = sum / lower[i][i];
    }
    return b;
  }
}
