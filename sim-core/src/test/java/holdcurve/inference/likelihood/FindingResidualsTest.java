package holdcurve.inference.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingLikelihood;
import holdcurve.inference.ranking.InventedJob;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.job.Job;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FindingResidualsTest {
  /** A leak seen to be 0.4 mL/min, give or take 0.1, in all tests or in one. */
  private record SeenLeak(int test) implements FindingLikelihood {
    @Override
    public int rows() {
      return 1;
    }

    @Override
    public boolean concerns(int other) {
      return other == test;
    }

    @Override
    public void residuals(CircuitState truth, double[] out, int offset) {
      double flow = truth.condition(test).leaks().get(0).law().flow(2e5) * 60e6;
      out[offset] = (flow - 0.4) / 0.1;
    }
  }

  private static final Job JOB = InventedJob.of();
  private static final List<FindingLikelihood> SEEN =
      List.of(new SeenLeak(CircuitState.ALL_TESTS), new SeenLeak(1));

  private static JobModel data(List<FindingLikelihood> sides) {
    JobModel data = JobModel.of(JOB);
    return new JobModel(
        JOB,
        data.series(),
        data.errors(),
        data.operations(),
        data.temperatures(),
        sides,
        data.coarsening());
  }

  private static HypothesisModel model(List<FindingLikelihood> sides) {
    return InventedJob.model(data(sides), new HoldSimulator());
  }

  private static double logLikelihood(List<FindingLikelihood> sides, double[] u) {
    return new WholeLikelihood(data(sides), model(sides)).at(u);
  }

  private static double[] drawn(int dimension) {
    return new Random(3).doubles(dimension, -0.7, 0.7).toArray();
  }

  @Test
  void sideEvidenceAddsItsOwnLogLikelihood() {
    HypothesisModel with = model(SEEN);
    double[] u = drawn(with.dimension());
    double[] rows = with.residuals(u).orElseThrow();
    double more = logLikelihood(SEEN, u) - logLikelihood(List.of(), u);
    double all = rows[rows.length - 2];
    double one = rows[rows.length - 1];
    assertEquals(-0.5 * (all * all + one * one) - Math.log(2 * Math.PI), more, 1e-9);
  }

  @Test
  void sensitivitiesOfSideRowsAreThoseOfDifferences() {
    HypothesisModel model = model(SEEN);
    double[] u = drawn(model.dimension());
    int[] by = model.latentMap().latents().curve();
    double[][] sensitivities = model.linear(u, by).orElseThrow().sensitivities();
    double step = 1e-5;
    for (int k = 0; k < by.length; k++) {
      double[] v = u.clone();
      v[by[k]] += step;
      double[] up = model.residuals(v).orElseThrow();
      v[by[k]] -= 2 * step;
      double[] down = model.residuals(v).orElseThrow();
      for (int i = up.length - 2; i < up.length; i++) {
        double difference = (up[i] - down[i]) / (2 * step);
        assertEquals(difference, sensitivities[i][k], 1e-3 * (1 + Math.abs(difference)));
      }
    }
  }
}
