package holdcurve.physics.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class AmountTest {
  @Test
  void weightsCount() {
    Amount amount = Amount.of(List.of(3.0, 1.0, 2.0), List.of(0.02, 0.02, 0.96));
    assertEquals(2, amount.mean(), 1e-12);
    assertEquals(2, amount.low());
    assertEquals(2, amount.high());
  }

  /** Even steps of probability through a normal distribution, against its own quantiles. */
  @Test
  void rangeHoldsNineTenths() {
    NormalDistribution normal = new NormalDistribution(5, 2);
    List<Double> values =
        IntStream.range(0, 2000)
            .mapToObj(i -> normal.inverseCumulativeProbability((i + 0.5) / 2000))
            .collect(Collectors.toList());
    Amount amount = Amount.of(values, values.stream().map(v -> 1.0).toList());
    assertEquals(5, amount.mean(), 1e-6);
    assertEquals(normal.inverseCumulativeProbability(0.05), amount.low(), 0.01);
    assertEquals(normal.inverseCumulativeProbability(0.95), amount.high(), 0.01);
  }
}
