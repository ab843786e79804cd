package holdcurve.inference.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Benchmarks of Feroz, Hobson and Bridges, Monthly Notices of the Royal Astronomical Society 398
 * (2009) 1601; their values recomputed by quadrature.
 */
class TemperedEvidenceTest {
  private static final JsonNode CASES = ReferenceEvidence.json("evidence_benchmarks.json");

  private static TemperedEvidence sampled(LogLikelihood likelihood, long seed) {
    return new TemperedEvidence(likelihood, seed, 150, 8, 2);
  }

  /** Polynomials of degree 0 to 3 through eight points: evidence in closed form. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void integratesLinearGaussianModels(int degree) {
    assertHonest(new Ladder(degree), Ladder.logEvidence(degree), 20);
    WeightedDraws draws = sampled(new Ladder(degree), 20 + degree).draws();
    for (int j = 0; j <= degree; j++) {
      int at = j;
      double deviation = Ladder.posteriorDeviation(degree)[j];
      assertEquals(Ladder.posteriorMean(degree)[j], draws.mean(u -> u[at]), 0.25 * deviation);
      double width = draws.quantile(u -> u[at], 0.95) - draws.quantile(u -> u[at], 0.05);
      assertEquals(2 * 1.645 * deviation, width, 0.5 * deviation);
    }
  }

  /** Root mean square of error over reported error is about one. */
  private static void assertHonest(LogLikelihood likelihood, double truth, int seeds) {
    double sum = 0;
    for (int seed = 0; seed < seeds; seed++) {
      TemperedEvidence runs = sampled(likelihood, seed);
      sum += Math.pow((runs.logEvidence() - truth) / runs.standardError(), 2);
    }
    double rootMeanSquare = Math.sqrt(sum / seeds);
    assertTrue(rootMeanSquare > 0.6 && rootMeanSquare < 1.4, "rms " + rootMeanSquare);
  }

  @OutsideCheck(
      what = "evidence of two Gaussian shells",
      source = "Feroz, Hobson and Bridges 2009, recomputed",
      value = "-1.7456 and -5.6736 nat, 2 and 5 dimensions",
      tolerance = 1,
      unit = "times 0.1 nat or three standard errors")
  @ParameterizedTest
  @ValueSource(ints = {2, 5})
  void integratesGaussianShells(int dimension) {
    double truth = CASES.get("gaussian_shells_logZ").get("" + dimension).asDouble();
    for (int seed = 0; seed < 4; seed++) {
      assertWithin(
          "evidence of two Gaussian shells", truth, BoxLikelihoods.shells(dimension), seed);
    }
  }

  @OutsideCheck(
      what = "evidence of the eggbox",
      source = "Feroz, Hobson and Bridges 2009, recomputed",
      value = "235.8559 nat",
      tolerance = 1,
      unit = "times 0.1 nat or three standard errors")
  @Test
  void integratesTheEggbox() {
    double truth = CASES.get("eggbox_logZ").asDouble();
    for (int seed = 0; seed < 4; seed++) {
      assertWithin("evidence of the eggbox", truth, BoxLikelihoods.eggbox(), seed);
    }
  }

  private static void assertWithin(String what, double truth, LogLikelihood likelihood, int seed) {
    TemperedEvidence evidence = sampled(likelihood, seed);
    assertTrue(evidence.standardError() < 0.35, "error " + evidence.standardError());
    double allowed = Math.max(0.1, 3 * evidence.standardError());
    OutsideChecks.holds(what, truth / allowed, evidence.logEvidence() / allowed);
  }

  /** Truth by quadrature. */
  @Test
  void reportedErrorsAreHonest() {
    RidgeModel banana = RidgeModel.banana();
    assertHonest(banana, banana.logEvidence(), 40);
  }

  /** Half of the prior is possible, all alike: Z = 1/2, and the draws are half-normal. */
  @Test
  void countsThePossiblePartOfThePrior() {
    LogLikelihood half = PlainSampler.of(1, u -> u[0] > 0 ? 0 : Double.NEGATIVE_INFINITY);
    TemperedEvidence evidence = sampled(half, 3);
    assertEquals(Math.log(0.5), evidence.logEvidence(), 3 * evidence.standardError());
    assertEquals(Math.sqrt(2 / Math.PI), evidence.draws().mean(u -> u[0]), 0.1);
    assertTrue(evidence.draws().quantile(u -> u[0], 0) > 0);
  }

  @Test
  void saysSoWhenNothingIsPossible() {
    LogLikelihood never = PlainSampler.of(2, u -> Double.NEGATIVE_INFINITY);
    TemperedEvidence evidence = sampled(never, 3);
    assertEquals(Double.NEGATIVE_INFINITY, evidence.logEvidence());
    assertEquals(Double.POSITIVE_INFINITY, evidence.standardError());
    assertEquals(0, evidence.draws().size());
  }
}
