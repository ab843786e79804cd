package holdcurve.inference.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.common.work.ComputationException;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against the library's decomposition. */
class CholeskyTest {
  private static final int SIZE = 12;
  private static final RealMatrix MATRIX = matrix();
  private static final double[] RIGHT = new Random(2).doubles(SIZE, -1, 1).toArray();

  private static RealMatrix matrix() {
    Random random = new Random(1);
    RealMatrix any = new Array2DRowRealMatrix(SIZE, SIZE);
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        any.setEntry(i, j, random.nextGaussian());
      }
    }
    RealMatrix square = any.multiply(any.transpose());
    return square.add(square.transpose()).scalarMultiply(0.5);
  }

  @Test
  void solvesAsTheLibraryDoes() {
    CholeskyDecomposition library = new CholeskyDecomposition(MATRIX);
    Cholesky ours = Cholesky.of(MATRIX.getData(), 0);
    double[] expected = library.getSolver().solve(new ArrayRealVector(RIGHT)).toArray();
    assertArrayEquals(expected, ours.solve(RIGHT), 1e-8);
    assertEquals(Math.log(library.getDeterminant()), ours.logDeterminant(), 1e-9);
  }

  /** Independent numbers of variance 1 become numbers whose precision is the matrix. */
  @Test
  void drawsHaveTheMatrixAsTheirPrecision() {
    Cholesky ours = Cholesky.of(MATRIX.getData(), 0);
    RealMatrix covariance = new Array2DRowRealMatrix(SIZE, SIZE);
    for (int k = 0; k < SIZE; k++) {
      double[] unit = new double[SIZE];
      unit[k] = 1;
      ArrayRealVector moved = new ArrayRealVector(ours.forward(unit));
      covariance = covariance.add(moved.outerProduct(moved));
    }
    double[][] product = covariance.multiply(MATRIX).getData();
    for (int i = 0; i < SIZE; i++) {
      double[] expected = new double[SIZE];
      expected[i] = 1;
      assertArrayEquals(expected, product[i], 1e-7);
    }
  }

  /** As in a job: some coordinates are common, the rest belong to one test each. */
  @Test
  void passesOverWhatStaysZero() {
    RealMatrix arrow = MATRIX.copy();
    for (int i = 4; i < SIZE; i++) {
      for (int j = 4; j < i; j++) {
        if ((i - 4) / 4 != (j - 4) / 4) {
          arrow.setEntry(i, j, 0);
          arrow.setEntry(j, i, 0);
        }
      }
      arrow.addToEntry(i, i, 40);
    }
    double[] x = Cholesky.of(arrow.getData(), 0).solve(RIGHT);
    assertArrayEquals(RIGHT, arrow.operate(x), 1e-9);
  }

  @Test
  void raisesTheDiagonal() {
    double[] x = Cholesky.of(MATRIX.getData(), 0.7).solve(RIGHT);
    double[] product = MATRIX.operate(x);
    for (int i = 0; i < SIZE; i++) {
      assertEquals(RIGHT[i], product[i] + 0.7 * x[i], 1e-10);
    }
  }

  @Test
  void refusesWhatIsNotPositive() {
    double[][] flat = {{1, 1}, {1, 1}};
    assertThrows(ComputationException.class, () -> Cholesky.of(flat, 0));
  }
}
