package holdcurve.inference.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.inference.ranking.InventedJob;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.record.job.Job;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HypothesisSensitivitiesTest {
  private static final Job JOB = InventedJob.of();
  private static final double STEP = 3e-4;

  private static double[] drawn(int dimension) {
    return new Random(3).doubles(dimension, -0.7, 0.7).toArray();
  }

  /** With a tight solver: at the usual tolerance its noise would stand in the differences. */
  @Test
  void sensitivitiesOfResidualsAreThoseOfDifferences() {
    HypothesisModel model = InventedJob.model(JOB, new HoldSimulator(Detail.LUMPED, 1e-8));
    double[] u = drawn(model.dimension());
    int[] by = model.latentMap().latents().curve();
    double[][] sensitivities = model.linear(u, by).orElseThrow().sensitivities();
    for (int k = 0; k < by.length; k++) {
      double at = u[by[k]];
      u[by[k]] = at + STEP;
      double[] up = model.residuals(u).orElseThrow();
      u[by[k]] = at - STEP;
      double[] down = model.residuals(u).orElseThrow();
      u[by[k]] = at;
      for (int i = 0; i < up.length; i++) {
        double difference = (up[i] - down[i]) / (2 * STEP);
        double tolerance = 2 + 1e-3 * Math.abs(difference);
        assertEquals(difference, sensitivities[i][k], tolerance, "reading " + i + " by " + by[k]);
      }
    }
  }
}
