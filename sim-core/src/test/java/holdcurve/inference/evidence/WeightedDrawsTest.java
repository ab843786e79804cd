package holdcurve.inference.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class WeightedDrawsTest {
  private static final WeightedDraws FOUR =
      new WeightedDraws(
          List.of(new double[] {4}, new double[] {1}, new double[] {3}, new double[] {2}),
          new double[] {1, 1, 1, 1});

  @Test
  void equalWeightsGiveTheOrdinarySummaries() {
    assertEquals(2.5, FOUR.mean(u -> u[0]), 1e-12);
    assertEquals(2.5, FOUR.quantile(u -> u[0], 0.5), 1e-12);
    assertEquals(1, FOUR.quantile(u -> u[0], 0), 0);
    assertEquals(4, FOUR.quantile(u -> u[0], 1), 0);
  }

  /** Draws from N(0, 1.5²) weighted to N(0, 1): 5 % and 95 % points ±1.6449. */
  @Test
  void weightedNormalDrawsHaveNormalQuantiles() {
    Well19937c random = new Well19937c(2);
    List<double[]> points = new ArrayList<>();
    double[] weights = new double[20_000];
    for (int i = 0; i < weights.length; i++) {
      double x = 1.5 * random.nextGaussian();
      points.add(new double[] {x});
      weights[i] = Math.exp(-0.5 * x * x * (1 - 1 / 2.25));
    }
    WeightedDraws draws = new WeightedDraws(points, weights);
    assertEquals(-1.6449, draws.quantile(u -> u[0], 0.05), 0.06);
    assertEquals(1.6449, draws.quantile(u -> u[0], 0.95), 0.06);
  }

  @Test
  void refusesBadWeightsAndProbabilities() {
    List<double[]> one = List.of(new double[] {1});
    for (double bad : new double[] {-1, 0, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(
          IllegalArgumentException.class, () -> new WeightedDraws(one, new double[] {bad}));
    }
    assertThrows(IllegalArgumentException.class, () -> new WeightedDraws(one, new double[2]));
    assertThrows(IllegalArgumentException.class, () -> FOUR.quantile(u -> u[0], 1.2));
  }
}
