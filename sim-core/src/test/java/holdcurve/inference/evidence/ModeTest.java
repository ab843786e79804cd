package holdcurve.inference.evidence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ModeTest {
  /** Covariance is the inverse of the Hessian: here [2 −1; −1 2]/3 for [2 1; 1 2]. */
  @Test
  void drawsScatterAsTheCurvatureHasIt() {
    double[][] hessian = {{2, 1}, {1, 2}};
    Mode mode = new Mode(new double[] {1, -2}, 0, Gaussians.factor(hessian));
    WeightedDraws draws = mode.draws(1, 20_000);
    assertArrayEquals(mode.u(), draws.point(0));
    double first = draws.mean(u -> u[0]);
    double second = draws.mean(u -> u[1]);
    assertEquals(1, first, 0.03);
    assertEquals(-2, second, 0.03);
    assertEquals(2.0 / 3, draws.mean(u -> Math.pow(u[0] - first, 2)), 0.03);
    assertEquals(-1.0 / 3, draws.mean(u -> (u[0] - first) * (u[1] - second)), 0.03);
  }
}
