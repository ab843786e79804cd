package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Derivatives of solutions against closed forms and against differences of whole runs. */
class TangentDriverTest {
  private static final double[] TIMES = {0, 0.4, 1, 3, 10};

  /** y' = −k y²: y = y₀/(1 + k y₀ t). */
  private record Quadratic(double k) implements ParametricEquations {
    @Override
    public int getDimension() {
      return 1;
    }

    @Override
    public int getParameterCount() {
      return 2;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] slope) {
      slope[0] = -k * y[0] * y[0];
    }

    @Override
    public void computeJacobian(double t, double[] y, double[][] dfdy) {
      dfdy[0][0] = -2 * k * y[0];
    }

    @Override
    public void computeParameterDerivatives(double t, double[] y, double[] dfdtheta, int stride) {
      dfdtheta[0] = -y[0] * y[0];
      dfdtheta[1] = 0;
    }
  }

  /** y' = θ cos θt: y = sin θt. */
  private record Swing(double theta) implements ParametricEquations {
    @Override
    public int getDimension() {
      return 1;
    }

    @Override
    public int getParameterCount() {
      return 1;
    }

    @Override
    public boolean isAutonomous() {
      return false;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] slope) {
      slope[0] = theta * Math.cos(theta * t);
    }

    @Override
    public void computeJacobian(double t, double[] y, double[][] dfdy) {
      dfdy[0][0] = 0;
    }

    @Override
    public void computeTimeDerivative(double t, double[] y, double[] dfdt) {
      dfdt[0] = -theta * theta * Math.sin(theta * t);
    }

    @Override
    public void computeParameterDerivatives(double t, double[] y, double[] dfdtheta, int stride) {
      dfdtheta[0] = Math.cos(theta * t) - theta * t * Math.sin(theta * t);
    }
  }

  /** The chemistry of Robertson with its three rate constants as parameters. */
  private record Kinetics(double... k) implements ParametricEquations {
    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public int getParameterCount() {
      return 3;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] slope) {
      slope[0] = -k[0] * y[0] + k[2] * y[1] * y[2];
      slope[2] = k[1] * y[1] * y[1];
      slope[1] = -slope[0] - slope[2];
    }

    @Override
    public void computeJacobian(double t, double[] y, double[][] dfdy) {
      dfdy[0] = new double[] {-k[0], k[2] * y[2], k[2] * y[1]};
      dfdy[2] = new double[] {0, 2 * k[1] * y[1], 0};
      Arrays.setAll(dfdy[1], j -> -dfdy[0][j] - dfdy[2][j]);
    }

    @Override
    public void computeParameterDerivatives(double t, double[] y, double[] dfdtheta, int stride) {
      double[][] rows = {{-y[0], 0, y[1] * y[2]}, {0, 0, 0}, {0, y[1] * y[1], 0}};
      Arrays.setAll(rows[1], k -> -rows[0][k] - rows[2][k]);
      for (int i = 0; i < 3; i++) {
        System.arraycopy(rows[i], 0, dfdtheta, i * stride, 3);
      }
    }
  }

  private static double[][] derivatives(
      ParametricEquations equations, double[] y, double[] s, int observed, Tolerances tolerances) {
    int m = equations.getParameterCount();
    double[][] derivatives = new double[TIMES.length][m];
    new TangentDriver(RosenbrockMethod.RODAS4P2.tableau(), tolerances, m, observed)
        .integrate(equations, 0, y, s, 10, TIMES, new double[TIMES.length], derivatives);
    return derivatives;
  }

  @ParameterizedTest
  @EnumSource
  void quadraticDecayHasItsClosedFormSlopes(RosenbrockMethod method) {
    double k = 0.7;
    double start = 2;
    double[] y = {start};
    double[] s = {0, 1};
    double[] values = new double[TIMES.length];
    double[][] derivatives = new double[TIMES.length][2];
    new TangentDriver(method.tableau(), Tolerances.uniform(1, 1e-7, 1e-7), 2, 0)
        .integrate(new Quadratic(k), 0, y, s, 10, TIMES, values, derivatives);
    for (int i = 0; i < TIMES.length; i++) {
      double wide = 1 + k * start * TIMES[i];
      assertEquals(start / wide, values[i], 1e-5);
      assertEquals(-start * start * TIMES[i] / (wide * wide), derivatives[i][0], 1e-4);
      assertEquals(1 / (wide * wide), derivatives[i][1], 1e-4);
    }
    assertArrayEquals(derivatives[4], s, 1e-12);
  }

  @Test
  void drivenSwingHasItsClosedFormSlope() {
    double theta = 0.6;
    double[][] slope =
        derivatives(
            new Swing(theta), new double[1], new double[1], 0, Tolerances.uniform(1, 1e-7, 1e-7));
    for (int i = 0; i < TIMES.length; i++) {
      assertEquals(TIMES[i] * Math.cos(theta * TIMES[i]), slope[i][0], 2e-4);
    }
  }

  /** Differences of runs with a tolerance of 1e-10 are good to about 1e-6 of the slope here. */
  @Test
  void stiffKineticsHaveTheSlopesOfDifferences() {
    double[] k = {0.04, 3e7, 1e4};
    double[][] slopes =
        derivatives(
            new Kinetics(k),
            new double[] {1, 0, 0},
            new double[9],
            2,
            Tolerances.of(new double[] {1e-9, 1e-12, 1e-9}, new double[] {1e-6, 1e-6, 1e-6}));
    for (int j = 0; j < 3; j++) {
      double[] up = run(k, j, 1 + 1e-4);
      double[] down = run(k, j, 1 - 1e-4);
      for (int i = 1; i < TIMES.length; i++) {
        double difference = (up[i] - down[i]) / (2e-4 * k[j]);
        assertEquals(difference, slopes[i][j], 1e-3 * Math.abs(difference));
      }
    }
  }

  private static double[] run(double[] k, int j, double factor) {
    double[] moved = k.clone();
    moved[j] *= factor;
    double[][] rows = new double[TIMES.length][3];
    Tolerances tight =
        Tolerances.of(new double[] {1e-13, 1e-16, 1e-13}, new double[] {1e-10, 1e-10, 1e-10});
    new LeanRosenbrockDriver(RosenbrockMethod.RODAS5P.tableau(), tight)
        .integrate(new Kinetics(moved), 0, new double[] {1, 0, 0}, 10, TIMES, rows);
    return Arrays.stream(rows).mapToDouble(row -> row[2]).toArray();
  }

  @Test
  void refusesWhatDoesNotFit() {
    TangentDriver driver =
        new TangentDriver(
            RosenbrockMethod.RODAS4.tableau(), Tolerances.uniform(1, 1e-6, 1e-6), 2, 0);
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                driver.integrate(
                    new Quadratic(1),
                    0,
                    new double[1],
                    new double[3],
                    1,
                    new double[0],
                    new double[0],
                    new double[0][]));
    assertEquals(
        "1 components, 2 parameters and 3 derivatives given to a driver for 1 and 2",
        thrown.getMessage());
  }
}
