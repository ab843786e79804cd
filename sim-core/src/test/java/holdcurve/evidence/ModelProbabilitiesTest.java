package holdcurve.evidence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class ModelProbabilitiesTest {
  /** Bayes' rule by hand: odds 3 : 1 from evidence, 1 : 2 from the prior. */
  @Test
  void multipliesEvidenceAndPrior() {
    double[] found =
        ModelProbabilities.of(
                new double[] {Math.log(3), 0},
                new double[2],
                new double[] {Math.log(1.0 / 3), Math.log(2.0 / 3)})
            .probabilities();
    assertArrayEquals(new double[] {0.6, 0.4}, found, 1e-12);
  }

  /** Two equal models: p = 1/(1 + e^δ), dp/dδ = −1/4, δ has the error √2 s. */
  @Test
  void propagatesTheErrors() {
    ModelProbabilities found =
        ModelProbabilities.of(new double[2], new double[] {0.1, 0.1}, new double[2]);
    assertEquals(0.25 * Math.sqrt(2) * 0.1, found.standardErrors()[0], 1e-12);
  }

  /** The same errors by brute force: perturb the log evidences, look at the spread. */
  @Test
  void errorsAgreeWithResampling() {
    double[] logs = {-3, -3.5, -5, -40};
    double[] errors = {0.1, 0.05, 0.2, 3};
    ModelProbabilities found = ModelProbabilities.of(logs, errors, new double[4]);
    Well19937c random = new Well19937c(1);
    double[] square = new double[4];
    for (int n = 0; n < 20_000; n++) {
      double[] moved = new double[4];
      Arrays.setAll(moved, i -> logs[i] + errors[i] * random.nextGaussian());
      double[] p = LogSum.normalised(moved);
      for (int i = 0; i < 4; i++) {
        square[i] += Math.pow(p[i] - found.probabilities()[i], 2) / 20_000;
      }
    }
    for (int i = 0; i < 3; i++) {
      assertEquals(
          Math.sqrt(square[i]), found.standardErrors()[i], 0.1 * found.standardErrors()[i]);
    }
  }

  @Property
  void aCommonConstantChangesNothing(
      @ForAll @Size(5) List<@DoubleRange(min = -50, max = 50) Double> given,
      @ForAll @DoubleRange(min = -1e5, max = 1e5) double shift) {
    double[] logs = given.stream().mapToDouble(Double::doubleValue).toArray();
    double[] moved = Arrays.stream(logs).map(x -> x + shift).toArray();
    double[] one = ModelProbabilities.of(logs, new double[5], new double[5]).probabilities();
    double[] two = ModelProbabilities.of(moved, new double[5], new double[5]).probabilities();
    assertArrayEquals(one, two, 1e-9);
    assertEquals(1, Arrays.stream(one).sum(), 1e-12);
  }

  @Test
  void aModelThatIsRuledOutHasProbabilityZero() {
    ModelProbabilities found =
        ModelProbabilities.of(
            new double[] {Double.NEGATIVE_INFINITY, -900},
            new double[] {Double.POSITIVE_INFINITY, 0.1},
            new double[2]);
    assertArrayEquals(new double[] {0, 1}, found.probabilities());
    assertArrayEquals(new double[] {0, 0}, found.standardErrors());
  }

  @Test
  void refusesNumbersThatMeanNothing() {
    double[] none = {Double.NEGATIVE_INFINITY};
    double[] nan = {Double.NaN};
    double[] zero = {0};
    assertThrows(IllegalArgumentException.class, () -> ModelProbabilities.of(none, zero, zero));
    assertThrows(IllegalArgumentException.class, () -> ModelProbabilities.of(nan, zero, zero));
    assertThrows(IllegalArgumentException.class, () -> ModelProbabilities.of(zero, nan, zero));
    assertThrows(
        IllegalArgumentException.class, () -> ModelProbabilities.of(zero, zero, new double[2]));
  }
}
