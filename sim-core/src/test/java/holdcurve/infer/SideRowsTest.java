package holdcurve.infer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.hold.HoldSimulator;
import holdcurve.job.Job;
import holdcurve.side.SideEvidence;
import holdcurve.side.Truth;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SideRowsTest {
  /** A leak seen to be 0.4 mL/min, give or take 0.1, in all tests or in one. */
  private record SeenLeak(int test) implements SideEvidence {
    @Override
    public int rows() {
      return 1;
    }

    @Override
    public boolean concerns(int other) {
      return other == test;
    }

    @Override
    public void residuals(Truth truth, double[] out, int offset) {
      double flow = truth.condition(test).leaks().get(0).law().flow(2e5) * 60e6;
      out[offset] = (flow - 0.4) / 0.1;
    }
  }

  private static final Job JOB = InventedJob.of();
  private static final List<SideEvidence> SEEN =
      List.of(new SeenLeak(Truth.ALL_TESTS), new SeenLeak(1));

  private static HypothesisModel model(List<SideEvidence> sides) {
    InventedJob.Drip drip = new InventedJob.Drip();
    Hypothesis.Member member = new Hypothesis.Member(drip, drip.sites(JOB.circuit()).get(0));
    JobModel data = JobModel.of(JOB);
    JobModel more = new JobModel(JOB, data.series(), data.errors(), data.operations(), sides);
    return new HypothesisModel(
        more, new Hypothesis(List.of(member), 1), UnknownPriors.usual(), new HoldSimulator());
  }

  private static double[] drawn(int dimension) {
    return new Random(3).doubles(dimension, -0.7, 0.7).toArray();
  }

  @Test
  void sideEvidenceAddsItsOwnLogLikelihood() {
    HypothesisModel with = model(SEEN);
    HypothesisModel without = model(List.of());
    double[] u = drawn(with.dimension());
    double[] rows = new double[with.residualCount()];
    double more = with.residuals(u, rows) - without.residuals(u, new double[rows.length - 2]);
    double all = rows[rows.length - 3];
    double one = rows[rows.length - 2];
    assertEquals(-0.5 * (all * all + one * one) - Math.log(2 * Math.PI), more, 1e-9);
  }

  @Test
  void slopesOfSideRowsAreThoseOfDifferences() {
    HypothesisModel model = model(SEEN);
    double[] u = drawn(model.dimension());
    double[][] jacobian = new double[model.residualCount()][u.length];
    assertTrue(model.jacobian(u, jacobian));
    double step = 1e-5;
    double[] up = new double[model.residualCount()];
    double[] down = new double[model.residualCount()];
    for (int j = 0; j < u.length; j++) {
      double[] v = u.clone();
      v[j] += step;
      model.residuals(v, up);
      v[j] -= 2 * step;
      model.residuals(v, down);
      for (int i = up.length - 3; i < up.length - 1; i++) {
        double difference = (up[i] - down[i]) / (2 * step);
        assertEquals(difference, jacobian[i][j], 1e-3 * (1 + Math.abs(difference)));
      }
    }
  }
}
