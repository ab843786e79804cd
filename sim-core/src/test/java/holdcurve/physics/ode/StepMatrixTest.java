package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Solves with shift·I − J against the QR decomposition of Commons Math. */
class StepMatrixTest {

  private static double[][] random(int n, double density, Random random) {
    double[][] jacobian = new double[n][n];
    for (double[] row : jacobian) {
      Arrays.setAll(row, j -> random.nextDouble() < density ? random.nextGaussian() : 0);
    }
    return jacobian;
  }

  private static double[] filled(int n, double value) {
    double[] filled = new double[n];
    Arrays.fill(filled, value);
    return filled;
  }

  private static RealMatrix matrix(double shift, double[][] jacobian) {
    return MatrixUtils.createRealIdentityMatrix(jacobian.length)
        .scalarMultiply(shift)
        .subtract(new Array2DRowRealMatrix(jacobian));
  }

  private static void assertSolves(double shift, double[][] jacobian, Random random) {
    int n = jacobian.length;
    double[] b = random.doubles(n).toArray();
    QRDecomposition qr = new QRDecomposition(matrix(shift, jacobian));
    double[] expected = qr.getSolver().solve(new ArrayRealVector(b)).toArray();
    StepMatrix step = new StepMatrix(n);
    step.note(jacobian);
    assertTrue(step.factor(shift, jacobian, filled(n, 1)));
    double[] solution = b.clone();
    step.solve(solution);
    double size = new ArrayRealVector(expected).getLInfNorm();
    assertArrayEquals(expected, solution, 1e-12 * size);
  }

  /** A strong diagonal: the sparse elimination goes through. */
  @Property(tries = 200)
  void solvesSparseMatrices(
      @ForAll @IntRange(min = 1, max = 25) int n,
      @ForAll @IntRange(min = 0, max = 10) int tenths,
      @ForAll long seed) {
    Random random = new Random(seed);
    assertSolves(3.0 * n, random(n, tenths / 10.0, random), random);
  }

  /** Next to nothing on the diagonal but 5 beside it: rows must change places. */
  @Property(tries = 100)
  void pivotsWhereTheDiagonalIsWeak(@ForAll @IntRange(min = 2, max = 12) int n, @ForAll long seed) {
    Random random = new Random(seed);
    double[][] jacobian = random(n, 0.5, random);
    for (int i = 0; i < n; i++) {
      double[] row = jacobian[i];
      Arrays.setAll(row, j -> 0.1 * row[j]);
      row[i] = 1e-9;
      row[(i + 1) % n] = 5;
    }
    assertSolves(1e-9, jacobian, random);
  }

  /**
   * Writing each unknown in another unit changes nothing but the unit of the solution: the same
   * pivots, and with powers of two the same digits.
   */
  @Property(tries = 200)
  void choiceOfUnitsDoesNotMatter(@ForAll @IntRange(min = 1, max = 12) int n, @ForAll long seed) {
    Random random = new Random(seed);
    double[][] jacobian = random(n, 1, random);
    double[] unit = new double[n];
    Arrays.setAll(unit, i -> Math.scalb(1.0, random.nextInt(80) - 40));
    double[][] converted = new double[n][n];
    for (int i = 0; i < n; i++) {
      int row = i;
      Arrays.setAll(converted[i], j -> jacobian[row][j] * unit[row] / unit[j]);
    }
    double[] plain = random.doubles(n).toArray();
    double[] inUnits = new double[n];
    Arrays.setAll(inUnits, i -> plain[i] * unit[i]);
    solveByPivoting(jacobian, filled(n, 1), plain);
    solveByPivoting(converted, unit, inUnits);
    for (int i = 0; i < n; i++) {
      assertEquals(plain[i], inUnits[i] / unit[i], "unknown " + i);
    }
  }

  private static void solveByPivoting(double[][] jacobian, double[] scale, double[] b) {
    EquilibratedLu lu = new EquilibratedLu(b.length);
    lu.factor(0.5, jacobian, scale);
    lu.solve(b);
  }

  @Test
  void namesTheColumnWithoutAPivot() {
    double[][] jacobian = {{1, 0, 0}, {0, 2, 0}, {0, 0, 3}};
    StepMatrix step = new StepMatrix(3);
    step.note(jacobian);
    assertFalse(step.factor(2, jacobian, filled(3, 1)));
    assertEquals(1, step.singularColumn());
  }

  /** An arrow with its head first fills completely if it is eliminated as it stands. */
  @Test
  void eliminatesInAnOrderThatMakesNoFill() {
    int n = 8;
    boolean[] arrow = new boolean[n * n];
    for (int i = 0; i < n; i++) {
      arrow[i] = true;
      arrow[i * n] = true;
    }
    SparsePattern pattern = new SparsePattern(n, arrow);
    assertEquals(n - 1, pattern.lowerRow.length);
    assertEquals(n - 1, pattern.upperRow.length);
  }

  /** Side by side or one by one: the same, with and without pivoting. */
  @Property(tries = 200)
  void solvesSideBySideAsOneByOne(@ForAll @IntRange(min = 1, max = 9) int m, @ForAll long seed) {
    Random random = new Random(seed);
    int n = 6;
    double[][] jacobian = random(n, 0.5, random);
    StepMatrix step = new StepMatrix(n);
    step.note(jacobian);
    double shift = seed % 2 == 0 ? 20 : 1e-3;
    if (!step.factor(shift, jacobian, filled(n, 1))) {
      return;
    }
    int stride = SideBySide.stride(m);
    double[] together = random.doubles((long) n * stride).toArray();
    double[] before = together.clone();
    step.solve(together, stride);
    for (int k = 0; k < m; k++) {
      double[] b = new double[n];
      for (int i = 0; i < n; i++) {
        b[i] = before[i * stride + k];
      }
      step.solve(b);
      for (int i = 0; i < n; i++) {
        assertEquals(b[i], together[i * stride + k], 1e-9 * (1 + Math.abs(b[i])));
      }
    }
  }
}
