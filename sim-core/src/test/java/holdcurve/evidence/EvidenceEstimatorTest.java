package holdcurve.evidence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EvidenceEstimatorTest {
  private static final Settings STANDARD = Settings.standard();

  /**
   * Error divided by reported error over 40 seeds on a strongly bent four-dimensional ridge, truth
   * by quadrature. For honest errors the root mean square is near 1; with 40 seeds its own error is
   * about 0.11, and errors from so few heavy-tailed draws are a little short.
   */
  @Test
  void reportedErrorsAreHonestOnABentRidge() {
    RidgeModel banana = RidgeModel.banana();
    double truth = banana.logEvidence();
    double[] z = standardised(banana, truth, 40);
    double rootMeanSquare = Math.sqrt(LogSum.squaredNorm(z) / z.length);
    assertTrue(rootMeanSquare > 0.6 && rootMeanSquare < 1.4, "rms " + rootMeanSquare);
    for (double value : z) {
      assertTrue(Math.abs(value) < 4, "worst " + value);
    }
  }

  private static double[] standardised(LogLikelihood likelihood, double truth, int seeds) {
    return IntStream.range(0, seeds)
        .mapToObj(seed -> EvidenceEstimator.estimate(likelihood, seed, STANDARD))
        .mapToDouble(e -> (e.logEvidence() - truth) / e.standardError())
        .toArray();
  }

  @Test
  void aSmoothModelOfEightParametersIsCheap() {
    RidgeModel model = RidgeModel.smoothEight();
    for (int seed = 0; seed < 20; seed++) {
      Evidence evidence = EvidenceEstimator.estimate(model, seed, STANDARD);
      assertEquals(Evidence.Method.IMPORTANCE, evidence.method());
      assertTrue(evidence.standardError() < 0.05);
      assertEquals(model.logEvidence(), evidence.logEvidence(), 0.15);
      assertTrue(evidence.likelihoodCalls() < 800, "calls " + evidence.likelihoodCalls());
    }
  }

  /** Truth: the one-dimensional integral of the model's own construction. */
  @Test
  void findsBothModesAndTheirWeights() {
    RidgeModel model = RidgeModel.twoModes();
    for (int seed = 0; seed < 20; seed++) {
      Evidence evidence = EvidenceEstimator.estimate(model, seed, STANDARD);
      assertEquals(model.logEvidence(), evidence.logEvidence(), 3.5 * evidence.standardError());
      double positive = evidence.draws().mean(u -> u[0] > 0 ? 1 : 0);
      assertEquals(model.probabilityOfPositiveFirst(), positive, 0.1);
    }
  }

  /** All of a thin circle is the mode. Truth: ∫ r exp(−r²/2) exp(−(r − 1.5)²/(2·0.05²)) dr. */
  @Test
  void integratesARing() {
    ResidualLikelihood ring = new Ring();
    double sum = 0;
    for (double r = 1e-4; r < 6; r += 1e-4) {
      sum += 1e-4 * r * Math.exp(-0.5 * r * r - 200 * (r - 1.5) * (r - 1.5));
    }
    for (int seed = 0; seed < 5; seed++) {
      Evidence evidence = EvidenceEstimator.estimate(ring, seed, STANDARD);
      double allowed = Math.max(0.1, 3 * evidence.standardError());
      assertEquals(Math.log(sum), evidence.logEvidence(), allowed, evidence.method().toString());
    }
  }

  private record Ring() implements ResidualLikelihood {
    @Override
    public int dimension() {
      return 2;
    }

    @Override
    public int residualCount() {
      return 1;
    }

    @Override
    public double residuals(double[] u, double[] out) {
      out[0] = (Math.hypot(u[0], u[1]) - 1.5) / 0.05;
      return -0.5 * out[0] * out[0];
    }
  }

  /** The sum of two coordinates known to 1e-7, N(0, 2) before: rounding must not stop the run. */
  @Test
  void survivesAnExtremelyNarrowPosterior() {
    Evidence evidence = EvidenceEstimator.estimate(new Needle(), 1, STANDARD);
    double truth = Math.log(1e-7) - 0.5 * Math.log(2) - 0.04 / 4;
    assertEquals(Evidence.Method.IMPORTANCE, evidence.method());
    assertEquals(truth, evidence.logEvidence(), 0.03);
  }

  private record Needle() implements ResidualLikelihood {
    @Override
    public int dimension() {
      return 2;
    }

    @Override
    public int residualCount() {
      return 1;
    }

    @Override
    public double residuals(double[] u, double[] out) {
      out[0] = (u[0] + u[1] - 0.2) * 1e7;
      return -0.5 * out[0] * out[0];
    }
  }

  /** A fitted error scale: the log likelihood holds more than the sum of squares. */
  @Test
  void agreesWithTemperingWhenTheErrorScaleIsFitted() {
    DecaySum model = new DecaySum(1);
    Evidence importance = EvidenceEstimator.estimate(model, 7, STANDARD);
    Evidence tempered = EvidenceEstimator.estimate(Plain.of(model), 7, STANDARD);
    assertEquals(Evidence.Method.IMPORTANCE, importance.method());
    assertEquals(Evidence.Method.TEMPERED, tempered.method());
    double error = Math.hypot(importance.standardError(), tempered.standardError());
    assertEquals(tempered.logEvidence(), importance.logEvidence(), 3 * error);
  }

  @Test
  void theSameSeedGivesTheSameAnswerOnAnyThread() {
    RidgeModel banana = RidgeModel.banana();
    double[] alone = run(IntStream.range(0, 8), banana);
    double[] together = run(IntStream.range(0, 8).parallel(), banana);
    assertArrayEquals(alone, together);
    assertTrue(alone[0] != alone[1]);
  }

  private static double[] run(IntStream seeds, LogLikelihood likelihood) {
    return seeds
        .mapToDouble(s -> EvidenceEstimator.estimate(likelihood, s, STANDARD).logEvidence())
        .toArray();
  }

  @Test
  void refusesAnInfiniteLikelihoodAndAStartOfTheWrongLength() {
    LogLikelihood infinite = Plain.of(1, u -> Double.POSITIVE_INFINITY);
    assertThrows(
        IllegalArgumentException.class, () -> EvidenceEstimator.estimate(infinite, 1, STANDARD));
    Settings wrong = STANDARD.withStarts(java.util.List.of(new double[3]));
    assertThrows(
        IllegalArgumentException.class,
        () -> EvidenceEstimator.estimate(RidgeModel.banana(), 1, wrong));
  }
}
