package holdcurve.physics.ode;

import java.util.Arrays;

/** Seven stars of masses 1 … 7 in a plane: x1..x7, y1..y7, then their velocities. Not stiff. */
final class Pleiades extends PublishedProblem {
  private static final int STARS = 7;
  private static final int HALF = 2 * STARS;

  Pleiades() {
    super("pleiades_nonstiff");
  }

  @Override
  double[] floor() {
    return filled(1);
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    System.arraycopy(y, HALF, slope, 0, HALF);
    Arrays.fill(slope, HALF, 2 * HALF, 0);
    for (int i = 0; i < STARS; i++) {
      for (int j = 0; j < STARS; j++) {
        if (i != j) {
          double dx = y[j] - y[i];
          double dy = y[STARS + j] - y[STARS + i];
          double pull = (j + 1) / Math.pow(dx * dx + dy * dy, 1.5);
          slope[HALF + i] += pull * dx;
          slope[HALF + STARS + i] += pull * dy;
        }
      }
    }
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    for (int i = 0; i < 2 * HALF; i++) {
      fill(dfdy[i], new double[2 * HALF]);
    }
    for (int i = 0; i < HALF; i++) {
      dfdy[i][HALF + i] = 1;
    }
    for (int i = 0; i < STARS; i++) {
      for (int j = 0; j < STARS; j++) {
        if (i != j) {
          addPull(i, j, y, dfdy);
        }
      }
    }
  }

  private static void addPull(int i, int j, double[] y, double[][] dfdy) {
    double dx = y[j] - y[i];
    double dy = y[STARS + j] - y[STARS + i];
    double square = dx * dx + dy * dy;
    double pull = (j + 1) / Math.pow(square, 1.5);
    double bend = 3 * pull / square;
    add(dfdy[HALF + i], i, j, pull - bend * dx * dx);
    add(dfdy[HALF + i], STARS + i, STARS + j, -bend * dx * dy);
    add(dfdy[HALF + STARS + i], i, j, -bend * dx * dy);
    add(dfdy[HALF + STARS + i], STARS + i, STARS + j, pull - bend * dy * dy);
  }

  private static void add(double[] row, int own, int other, double slope) {
    row[other] += slope;
    row[own] -= slope;
  }
}
