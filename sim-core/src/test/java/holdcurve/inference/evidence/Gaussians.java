package holdcurve.inference.evidence;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.RandomGenerator;

/** Small helpers for normal vectors and their factors. */
final class Gaussians {
  private Gaussians() {}

  /** A vector of independent N(0, 1) numbers. */
  static double[] vector(RandomGenerator random, int dimension) {
    double[] z = new double[dimension];
    for (int i = 0; i < dimension; i++) {
      z[i] = random.nextGaussian();
    }
    return z;
  }

  /** Lower triangular factor L with L Lᵀ = matrix; rounding asymmetry is averaged away. */
  static double[][] factor(double[][] matrix) {
    return decompose(matrix).getL().getData();
  }

  /**
   * Cholesky decomposition of a matrix that is positive definite but for rounding: where that
   * shows, the diagonal is raised by a small part of itself.
   */
  private static CholeskyDecomposition decompose(double[][] matrix) {
    for (double lift = 0; lift < 1e-3; lift = lift == 0 ? 1e-12 : 100 * lift) {
      try {
        return new CholeskyDecomposition(symmetric(matrix, lift), 1e-12, 0);
      } catch (NonPositiveDefiniteMatrixException tooNarrow) {
        continue;
      }
    }
    throw new IllegalArgumentException(
        "a shape matrix is far from positive definite: " + Arrays.deepToString(matrix));
  }

  private static RealMatrix symmetric(double[][] matrix, double lift) {
    int n = matrix.length;
    RealMatrix out = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        out.setEntry(i, j, 0.5 * (matrix[i][j] + matrix[j][i]) * (i == j ? 1 + lift : 1));
      }
    }
    return out;
  }

  /** origin + scale · L z. */
  static double[] affine(double[] origin, double[][] lower, double scale, double[] z) {
    double[] out = origin.clone();
    for (int i = 0; i < out.length; i++) {
      for (int j = 0; j <= i; j++) {
        out[i] += scale * lower[i][j] * z[j];
      }
    }
    return out;
  }

  /** An independent seed for part number {@code index} of a job seeded with {@code seed}. */
  static long seed(long seed, int index) {
    return new SplittableRandom(seed + 0x632be59bd9b4e019L * (index + 1)).nextLong();
  }
}
