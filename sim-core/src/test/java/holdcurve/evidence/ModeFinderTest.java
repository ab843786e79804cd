package holdcurve.evidence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ModeFinderTest {
  private static final Settings STANDARD = Settings.standard();

  /** Closed-form posterior of the straight-line ladder; see {@link LadderTest}. */
  @Test
  void findsThePosteriorMeanAndWidthOfALinearModel() {
    for (int degree = 0; degree < 4; degree++) {
      List<Mode> modes = ModeFinder.find(new Ladder(degree), 5, STANDARD);
      assertEquals(1, modes.size());
      Mode mode = modes.get(0);
      assertTrue(mode.converged());
      double[][] covariance = Gaussians.inverse(mode.hessian());
      for (int j = 0; j <= degree; j++) {
        double deviation = Ladder.posteriorDeviation(degree)[j];
        assertEquals(Ladder.posteriorMean(degree)[j], mode.u()[j], 0.02 * deviation);
        assertEquals(deviation, Math.sqrt(covariance[j][j]), 1e-4 * deviation);
      }
    }
  }

  @Test
  void findsEachModeOnce() {
    List<Mode> modes = ModeFinder.find(RidgeModel.twoModes(), 5, STANDARD);
    assertTrue(modes.stream().anyMatch(mode -> mode.u()[0] > 1));
    assertTrue(modes.stream().anyMatch(mode -> mode.u()[0] < -1));
    assertTrue(modes.size() <= 3, "two modes and at most the saddle between them");
  }

  /** The scale's logarithm is outside the squares: no step along an axis may lead uphill. */
  @Test
  void climbsTheTrueLogLikelihood() {
    DecaySum model = new DecaySum(1);
    Mode mode = ModeFinder.find(model, 5, STANDARD).get(0);
    for (int j = 0; j < 8; j++) {
      for (double side : new double[] {-1, 1}) {
        double[] moved = mode.u().clone();
        moved[j] += side * 0.2 / Math.sqrt(mode.hessian()[j][j]);
        double there = model.logLikelihood(moved) - 0.5 * LogSum.squaredNorm(moved);
        assertTrue(there < mode.logPosterior(), "coordinate " + j);
      }
    }
  }

  @Test
  void suppliedDerivativesLeadToTheSameMode() {
    RidgeModel banana = RidgeModel.banana();
    Mode differenced = ModeFinder.find(banana, 5, STANDARD).get(0);
    Mode supplied = ModeFinder.find(new ExactBanana(banana), 5, STANDARD).get(0);
    assertArrayEquals(supplied.u(), differenced.u(), 0.01);
    assertEquals(supplied.laplaceLogEvidence(), differenced.laplaceLogEvidence(), 0.01);
  }

  /** The model fails for u below 0.2, the prior mean included; the other starts must do. */
  @Test
  void goesRoundPlacesWhereTheModelFails() {
    ResidualLikelihood fragile = new FragileLine();
    List<Mode> modes = ModeFinder.find(fragile, 5, STANDARD);
    assertEquals(1, modes.size());
    assertEquals(8.0 / 17, modes.get(0).u()[0], 0.005);
  }

  private record ExactBanana(RidgeModel inner) implements ResidualLikelihood {
    @Override
    public int dimension() {
      return inner.dimension();
    }

    @Override
    public int residualCount() {
      return inner.residualCount();
    }

    @Override
    public double residuals(double[] u, double[] out) {
      return inner.residuals(u, out);
    }

    @Override
    public boolean jacobian(double[] u, double[][] out) {
      out[0][0] = 0.6;
      out[1][0] = 2 * u[0] / 0.25;
      out[2][0] = -0.5 / 0.3;
      out[3][0] = -2 * Math.cos(2 * u[0]) / 0.5;
      out[1][1] = 1 / 0.25;
      out[2][2] = 1 / 0.3;
      out[3][3] = 1 / 0.5;
      return true;
    }
  }

  /** One residual (u − 1/2)/(1/4): with the prior the mode is at 16·½/17. */
  private record FragileLine() implements ResidualLikelihood {
    @Override
    public int dimension() {
      return 1;
    }

    @Override
    public int residualCount() {
      return 1;
    }

    @Override
    public double residuals(double[] u, double[] out) {
      out[0] = u[0] < 0.2 ? Double.NaN : (u[0] - 0.5) / 0.25;
      return -0.5 * out[0] * out[0];
    }
  }
}
