package holdcurve.inference.evidence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ModelProbabilitiesTest {
  /** Bayes' rule by hand: odds 3 : 1 from evidence, 1 : 2 from the prior. */
  @Test
  void multipliesEvidenceAndPrior() {
    double[] found =
        ModelProbabilities.of(
            new double[] {Math.log(3), 0}, new double[] {Math.log(1.0 / 3), Math.log(2.0 / 3)});
    assertArrayEquals(new double[] {0.6, 0.4}, found, 1e-12);
  }

  @Property
  void aCommonConstantChangesNothing(
      @ForAll @Size(5) List<@DoubleRange(min = -50, max = 50) Double> given,
      @ForAll @DoubleRange(min = -1e5, max = 1e5) double shift) {
    double[] logs = given.stream().mapToDouble(Double::doubleValue).toArray();
    double[] moved = Arrays.stream(logs).map(x -> x + shift).toArray();
    double[] one = ModelProbabilities.of(logs, new double[5]);
    double[] two = ModelProbabilities.of(moved, new double[5]);
    assertArrayEquals(one, two, 1e-9);
    assertEquals(1, Arrays.stream(one).sum(), 1e-12);
  }

  @Test
  void aModelThatIsRuledOutHasProbabilityZero() {
    double[] found =
        ModelProbabilities.of(new double[] {Double.NEGATIVE_INFINITY, -900}, new double[2]);
    assertArrayEquals(new double[] {0, 1}, found);
  }

  @Test
  void refusesNumbersThatMeanNothing() {
    double[] none = {Double.NEGATIVE_INFINITY};
    double[] nan = {Double.NaN};
    double[] zero = {0};
    assertThrows(IllegalArgumentException.class, () -> ModelProbabilities.of(none, zero));
    assertThrows(IllegalArgumentException.class, () -> ModelProbabilities.of(nan, zero));
    assertThrows(IllegalArgumentException.class, () -> ModelProbabilities.of(zero, nan));
    assertThrows(IllegalArgumentException.class, () -> ModelProbabilities.of(zero, new double[2]));
  }
}
