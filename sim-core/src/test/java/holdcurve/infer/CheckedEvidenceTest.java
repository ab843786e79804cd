package holdcurve.infer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.evidence.Evidence;
import holdcurve.evidence.EvidenceEstimator;
import holdcurve.evidence.Settings;
import holdcurve.hold.HoldSimulator;
import holdcurve.job.Job;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Foreseen curves save simulations; the answer must be that of curves all simulated. */
class CheckedEvidenceTest {
  private static final Job JOB = InventedJob.of();

  private static MarginalLikelihood likelihood() {
    HypothesisModel model = InventedJob.model(JOB, new HoldSimulator());
    JobModel data = JobModel.of(JOB);
    List<Fit> fits =
        new FitSearch(data, model, Double.NEGATIVE_INFINITY, Progress.NONE)
            .from(List.of(), List.of(new double[model.dimension()]));
    return new MarginalLikelihood(data, model, fits);
  }

  @Test
  void evidenceIsThatOfSimulatedCurves() {
    MarginalLikelihood likelihood = likelihood();
    Evidence plain =
        EvidenceEstimator.estimate(
            likelihood,
            likelihood.modes(),
            1,
            Settings.standard().withDraws(200, 2000, 100, 0.05).withTempering(60, 2, 1));
    Evidence checked = new CheckedEvidence(likelihood(), Progress.NONE).estimate(2, 0.1);
    double error = Math.hypot(plain.standardError(), checked.standardError());
    assertTrue(checked.standardError() <= 0.1, "error " + checked.standardError());
    assertEquals(plain.logEvidence(), checked.logEvidence(), 4 * error);
  }

  @Test
  void curvesLearntAreForeseenFromThenOn() {
    MarginalLikelihood likelihood = likelihood();
    double[] s = likelihood.modes().get(0).u().clone();
    s[s.length - 2] += 0.3;
    s[s.length - 1] -= 0.5;
    MarginalLikelihood.Check first = likelihood.check(s);
    first.learn().run();
    MarginalLikelihood.Check second = likelihood.check(s);
    assertTrue(
        Math.abs(second.excess()) < Math.max(0.01, 0.3 * Math.abs(first.excess())),
        first.excess() + " then " + second.excess());
  }
}
