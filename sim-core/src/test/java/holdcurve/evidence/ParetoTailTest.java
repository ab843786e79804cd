package holdcurve.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ParetoTailTest {
  /**
   * Samples by inverting F(x) = 1 − (1 + k x/σ)^(−1/k). Four times the large-sample standard
   * deviation of the maximum likelihood estimate, (1 + k)/√n for k > −1/2 (Smith, Biometrika 72
   * (1985) 67), is allowed.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-0.3, 0.1, 0.4, 0.7, 1.2})
  void recoversTheShapeOfGeneralisedParetoSamples(double k) {
    Well19937c random = new Well19937c(11);
    double[] x = new double[5000];
    Arrays.setAll(x, i -> 3 * (Math.pow(1 - random.nextDouble(), -k) - 1) / k);
    ParetoTail tail = ParetoTail.fit(x);
    double gap = 4 * (1 + k) / Math.sqrt(x.length);
    assertEquals(k, tail.shape(), gap);
    assertEquals(3, tail.scale(), 3 * 4 * Math.sqrt(2 * (1 + k) / x.length));
  }

  /**
   * Target exp(−x), proposal θ exp(−θx): P(w > t) falls as t^(−θ/(θ−1)), so that k = 1 − 1/θ in
   * closed form.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1.25, 2, 4})
  void recoversTheTailOfExponentialImportanceWeights(double rate) {
    Well19937c random = new Well19937c(5);
    double[] logWeights = new double[20_000];
    Arrays.setAll(logWeights, i -> (rate - 1) * -Math.log(1 - random.nextDouble()) / rate);
    assertEquals(1 - 1 / rate, ParetoTail.ofWeights(logWeights), 0.15);
  }

  @Test
  void equalWeightsHaveNoTailAndTooFewCannotBeJudged() {
    assertEquals(Double.NEGATIVE_INFINITY, ParetoTail.ofWeights(new double[100]));
    assertEquals(Double.POSITIVE_INFINITY, ParetoTail.ofWeights(new double[9]));
    double[] impossible = new double[100];
    Arrays.fill(impossible, Double.NEGATIVE_INFINITY);
    assertEquals(Double.POSITIVE_INFINITY, ParetoTail.ofWeights(impossible));
    assertThrows(IllegalArgumentException.class, () -> ParetoTail.fit(new double[] {1, 2, 3}));
  }

  /** Vehtari et al. (2024), section 3.2.4: S ≥ 2200 or so is needed before 0.7 is the limit. */
  @Test
  void theLimitRisesWithTheNumberOfDraws() {
    assertEquals(0.5, ParetoTail.limit(100), 1e-12);
    assertTrue(ParetoTail.limit(2000) < 0.7);
    assertEquals(0.7, ParetoTail.limit(2300), 1e-12);
  }
}
