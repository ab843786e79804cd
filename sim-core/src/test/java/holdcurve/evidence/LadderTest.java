package holdcurve.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Linear Gaussian models: the evidence is the density of the data under N(0, σ²I + XXᵀ), worked out
 * twice, by that density and by completing the square, to 1e-10 nat. A prior or a constant that is
 * out by a factor shows here at once.
 */
class LadderTest {
  private final Evidence[] evidence =
      IntStream.range(0, 4)
          .mapToObj(k -> EvidenceEstimator.estimate(new Ladder(k), 20 + k, tight()))
          .toArray(Evidence[]::new);

  private static Settings tight() {
    return Settings.standard().withDraws(300, 3000, 100, 0.01);
  }

  @Test
  void evidenceIsWithinThreeErrors() {
    for (int k = 0; k < 4; k++) {
      double error = evidence[k].standardError();
      assertEquals(Ladder.logEvidence(k), evidence[k].logEvidence(), 3 * error, "degree " + k);
    }
  }

  @Test
  void laplaceIsExactForALinearModel() {
    for (int k = 0; k < 4; k++) {
      assertEquals(Ladder.logEvidence(k), evidence[k].laplaceLogEvidence(), 1e-4);
    }
  }

  @Test
  void probabilitiesAreRightToAHundredth() {
    double[] logs = new double[4];
    double[] errors = new double[4];
    for (int k = 0; k < 4; k++) {
      logs[k] = evidence[k].logEvidence();
      errors[k] = evidence[k].standardError();
    }
    ModelProbabilities found = ModelProbabilities.of(logs, errors, new double[4]);
    for (int k = 0; k < 4; k++) {
      assertEquals(Ladder.probabilities()[k], found.probabilities()[k], 0.01, "degree " + k);
      assertTrue(found.standardErrors()[k] < 0.01);
    }
  }

  @Test
  void drawsHaveThePosteriorMeanAndWidth() {
    for (int k = 0; k < 4; k++) {
      WeightedDraws draws = evidence[k].draws();
      for (int j = 0; j <= k; j++) {
        int at = j;
        double deviation = Ladder.posteriorDeviation(k)[j];
        assertEquals(Ladder.posteriorMean(k)[j], draws.mean(u -> u[at]), 0.25 * deviation);
        WeightedDraws.Interval interval = draws.interval(u -> u[at], 0.9);
        assertEquals(2 * 1.645 * deviation, interval.high() - interval.low(), 0.5 * deviation);
      }
    }
  }
}
