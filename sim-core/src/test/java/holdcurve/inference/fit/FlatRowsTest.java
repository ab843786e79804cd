package holdcurve.inference.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sums by fours against the library's matrices, for every remainder. */
class FlatRowsTest {
  private static final int COUNT = 9;

  private final Random random = new Random(3);

  private double[][] drawn(int columns) {
    double[][] rows = new double[COUNT][];
    for (int i = 0; i < COUNT; i++) {
      rows[i] = random.doubles(columns, -2, 2).toArray();
    }
    return rows;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 3, 4, 5, 8, 14})
  void sumsAreThoseOfTheMatrix(int columns) {
    double[][] plain = drawn(columns);
    RealMatrix matrix = new Array2DRowRealMatrix(plain);
    FlatRows rows = FlatRows.of(List.of(plain), columns);
    double[] factors = random.doubles(COUNT, -1, 1).toArray();
    double[] sum = new double[columns];
    rows.addSum(factors, 0, COUNT, sum);
    assertArrayEquals(matrix.preMultiply(factors), sum, 1e-13);
    double[] some = new double[columns];
    rows.addSum(new double[] {2, 3}, 4, 6, some);
    for (int c = 0; c < columns; c++) {
      some[c] -= 2 * plain[4][c] + 3 * plain[5][c];
    }
    assertArrayEquals(new double[columns], some, 1e-14);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 3, 4, 7})
  void squaresAreThoseOfTheMatrix(int columns) {
    double[][] plain = drawn(columns);
    plain[2][0] = 0;
    RealMatrix matrix = new Array2DRowRealMatrix(plain);
    RealMatrix square = matrix.transpose().multiply(matrix).scalarMultiply(0.7);
    FlatRows rows = FlatRows.of(List.of(plain), columns);
    double[] lower = new double[columns * (columns + 1) / 2];
    for (int i = 0; i < COUNT; i++) {
      rows.addSquare(i, 0.7, lower);
    }
    int place = 0;
    for (int j = 0; j < columns; j++) {
      double[] row = Arrays.copyOfRange(lower, place, place + j + 1);
      assertArrayEquals(Arrays.copyOf(square.getRow(j), j + 1), row, 1e-13);
      place += j + 1;
    }
  }
}
