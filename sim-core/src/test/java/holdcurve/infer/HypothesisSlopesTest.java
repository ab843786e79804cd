package holdcurve.infer;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.evidence.Mode;
import holdcurve.evidence.ModeFinder;
import holdcurve.evidence.Settings;
import holdcurve.hold.HoldSimulator;
import holdcurve.job.Job;
import holdcurve.model.NetworkAssembler.Detail;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HypothesisSlopesTest {
  private static final Job JOB = InventedJob.of();
  private static final double STEP = 3e-4;

  private static double[] drawn(int dimension) {
    return new Random(3).doubles(dimension, -0.7, 0.7).toArray();
  }

  /** With a tight solver: at the usual tolerance its noise would stand in the differences. */
  @Test
  void slopesOfResidualsAreThoseOfDifferences() {
    HypothesisModel model = InventedJob.model(JOB, new HoldSimulator(Detail.LUMPED, 1e-8));
    double[] u = drawn(model.dimension());
    double[][] jacobian = new double[model.residualCount()][u.length];
    assertTrue(model.jacobian(u, jacobian));
    double[] up = new double[model.residualCount()];
    double[] down = new double[model.residualCount()];
    for (int j = 0; j < u.length; j++) {
      double at = u[j];
      u[j] = at + STEP;
      model.residuals(u, up);
      u[j] = at - STEP;
      model.residuals(u, down);
      u[j] = at;
      for (int i = 0; i < up.length; i++) {
        double difference = (up[i] - down[i]) / (2 * STEP);
        double tolerance = 2e-3 + 1e-3 * Math.abs(difference);
        assertEquals(difference, jacobian[i][j], tolerance, "residual " + i + " by " + j);
      }
    }
  }

  @Test
  void aPointHasOneAnswerWhateverWasAskedBefore() {
    HypothesisModel model = InventedJob.model(JOB, new HoldSimulator());
    List<Mode> modes = ModeFinder.find(model, 5, Settings.standard());
    MarginalLikelihood first = new MarginalLikelihood(model, modes);
    double[] mode = first.modes().get(0).u();
    double answer = first.logLikelihood(mode);
    first.logLikelihood(new double[mode.length]);
    assertEquals(answer, first.logLikelihood(mode));
    HypothesisModel again = InventedJob.model(JOB, new HoldSimulator());
    List<Mode> others = ModeFinder.find(again, 5, Settings.standard());
    assertArrayEquals(modes.get(0).u(), others.get(0).u());
    assertEquals(answer, new MarginalLikelihood(again, others).logLikelihood(mode));
  }
}
