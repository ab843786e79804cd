package holdcurve.inference.posterior;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.inference.evidence.Ladder;
import holdcurve.inference.evidence.ModelProbabilities;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingLikelihood;
import holdcurve.inference.fit.Fitted;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.inference.ranking.InventedJob;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * The engine of a ranking on problems whose evidence has a closed form: polynomials through eight
 * points, in the place of what was found beside the gauge. The evidence is the density of the
 * points under N(0, σ²I + XXᵀ), worked out twice, by that density and by completing the square, to
 * 1e-10 nat. A prior or a constant that is out by a factor shows here at once.
 */
class ClosedFormEvidenceTest {
  private static final int DEGREES = 4;

  private static final Job JOB = InventedJob.of();
  private final Workers workers = new Workers(1, Progress.NONE, new ArrayList<>());

  /** Points whose curve depends on unknowns of its own, in proportion. */
  private record Points(int degree, Ladder ladder) implements FindingLikelihood {
    @Override
    public int rows() {
      return 8;
    }

    @Override
    public int unknowns() {
      return degree + 1;
    }

    @Override
    public double differenceStep() {
      return 1;
    }

    @Override
    public void residuals(CircuitState truth, double[] out, int offset) {
      double[] u = new double[unknowns()];
      Arrays.setAll(u, k -> truth.unknown(this, k));
      System.arraycopy(ladder.residuals(u), 0, out, offset, rows());
    }
  }

  private EvaluatedHypothesis evaluated(Points points) {
    JobModel whole = JobModel.of(JOB);
    JobModel data =
        new JobModel(
            JOB,
            List.of(),
            List.of(),
            List.of(),
            whole.temperatures(),
            List.of(points),
            whole.coarsening());
    HypothesisEvaluator evaluator =
        new HypothesisEvaluator(data, UnknownPriors.usual(), new Identifiability(JOB), workers);
    List<Fitted> fitted = evaluator.fitSingles(List.of(new Hypothesis(List.of(), 1)), 0.5);
    return HypothesisEvaluator.evaluated(fitted).get(0);
  }

  private double logEvidence(int degree) {
    Ladder ladder = new Ladder(degree);
    return evaluated(new Points(degree, ladder)).logEvidence() + ladder.logScale();
  }

  @Test
  void evidencesAndProbabilitiesAreThoseOfTheClosedForm() {
    double[] logs = new double[DEGREES];
    for (int degree = 0; degree < DEGREES; degree++) {
      logs[degree] = logEvidence(degree);
      assertEquals(Ladder.logEvidence(degree), logs[degree], 1e-6, "degree " + degree);
    }
    double[] probabilities = ModelProbabilities.of(logs, new double[DEGREES]);
    assertArrayEquals(Ladder.probabilities(), probabilities, 1e-6);
  }

  /** 2000 draws: the mean is off by 0.022 deviations, the deviation by 0.016 of itself. */
  @Test
  void drawsHaveThePosteriorMeanAndWidth() {
    for (int degree = 0; degree < DEGREES; degree++) {
      EvaluatedHypothesis evaluated = evaluated(new Points(degree, new Ladder(degree)));
      int first = evaluated.model().latentMap().latents().firstOfSides();
      List<double[]> draws = evaluated.draws(1, 2000);
      for (int k = 0; k <= degree; k++) {
        int at = first + k;
        double mean = draws.stream().mapToDouble(u -> u[at]).average().orElseThrow();
        double square =
            draws.stream().mapToDouble(u -> Math.pow(u[at] - mean, 2)).average().orElseThrow();
        double deviation = Ladder.posteriorDeviation(degree)[k];
        assertEquals(Ladder.posteriorMean(degree)[k], mean, 0.1 * deviation);
        assertEquals(deviation, Math.sqrt(square), 0.08 * deviation);
      }
    }
  }

  @AfterEach
  void close() {
    workers.close();
  }
}
