package holdcurve.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Benchmarks of Feroz, Hobson and Bridges, Monthly Notices of the Royal Astronomical Society 398
 * (2009) 1601; their values recomputed by quadrature.
 */
class TemperedEvidenceTest {
  private static final JsonNode CASES = Reference.json("evidence_benchmarks.json");

  @ParameterizedTest
  @ValueSource(ints = {2, 5})
  void integratesGaussianShells(int dimension) {
    double truth = CASES.get("gaussian_shells_logZ").get("" + dimension).asDouble();
    for (int seed = 0; seed < 4; seed++) {
      assertWithin(truth, 0.1, BoxLikelihoods.shells(dimension), seed);
    }
  }

  @Test
  void integratesTheEggbox() {
    double truth = CASES.get("eggbox_logZ").asDouble();
    for (int seed = 0; seed < 4; seed++) {
      assertWithin(truth, 0.1, BoxLikelihoods.eggbox(), seed);
    }
  }

  private static void assertWithin(double truth, double gap, LogLikelihood likelihood, int seed) {
    Evidence evidence = EvidenceEstimator.estimate(likelihood, seed, Settings.standard());
    assertEquals(Evidence.Method.TEMPERED, evidence.method());
    assertTrue(evidence.standardError() < 0.35, "error " + evidence.standardError());
    double allowed = Math.max(gap, 3 * evidence.standardError());
    assertEquals(truth, evidence.logEvidence(), allowed, "seed " + seed);
  }

  /** Root mean square of error over reported error, 40 seeds; truth by quadrature. */
  @Test
  void reportedErrorsAreHonest() {
    RidgeModel banana = RidgeModel.banana();
    double truth = banana.logEvidence();
    double sum = 0;
    for (int seed = 0; seed < 40; seed++) {
      TemperedEvidence runs = new TemperedEvidence(banana, seed, Settings.standard());
      sum += Math.pow((runs.logEvidence() - truth) / runs.standardError(), 2);
    }
    double rootMeanSquare = Math.sqrt(sum / 40);
    assertTrue(rootMeanSquare > 0.6 && rootMeanSquare < 1.4, "rms " + rootMeanSquare);
  }

  /** Half of the prior is possible, all alike: Z = 1/2, and the draws are half-normal. */
  @Test
  void countsThePossiblePartOfThePrior() {
    LogLikelihood half = Plain.of(1, u -> u[0] > 0 ? 0 : Double.NEGATIVE_INFINITY);
    Evidence evidence = EvidenceEstimator.estimate(half, 3, Settings.standard());
    assertEquals(Math.log(0.5), evidence.logEvidence(), 3 * evidence.standardError());
    assertEquals(Math.sqrt(2 / Math.PI), evidence.draws().mean(u -> u[0]), 0.1);
    assertTrue(evidence.draws().quantile(u -> u[0], 0) > 0);
  }

  @Test
  void saysSoWhenNothingIsPossible() {
    LogLikelihood never = Plain.of(2, u -> Double.NaN);
    Evidence evidence = EvidenceEstimator.estimate(never, 3, Settings.standard());
    assertEquals(Double.NEGATIVE_INFINITY, evidence.logEvidence());
    assertFalse(evidence.reliable());
    assertEquals(0, evidence.draws().size());
  }
}
