package holdcurve.bench.flowsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.number.Interval;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlowDeviationsTest {
  /** Two against each other: the median is their mean, and by hand u(d) = u q₁q₂/(√2 m²). */
  @Test
  void twoInjectorsByHand() {
    Interval first = FlowDeviations.of(List.of(90.0, 110.0), 0.01).get(0);
    assertEquals(-0.1, first.middle(), 1e-12);
    double error = 0.01 * 90 * 110 / (Math.sqrt(2) * 100 * 100);
    assertEquals(-0.1 + 1.645 * error, first.high(), 1e-12);
  }

  @Test
  void oneCloggedInjectorDoesNotMakeTheOthersRich() {
    List<Interval> found = FlowDeviations.of(List.of(100.0, 101.0, 70.0, 99.0, 100.0, 100.0), 0.01);
    assertEquals(-0.3, found.get(2).middle(), 1e-12);
    assertEquals(0, found.get(0).middle(), 1e-12);
  }

  /** Of 6000 simulated deviations 90 % inside would be 5400, give or take a few score. */
  @ParameterizedTest
  @ValueSource(ints = {5, 6})
  void intervalsHoldTheTruthNineTimesInTen(int count) {
    var random = new Well19937c(5);
    int inside = 0;
    for (int sheet = 0; sheet < 6000 / count; sheet++) {
      List<Double> truth = new ArrayList<>();
      List<Double> read = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        truth.add(100 * (1 + 0.05 * random.nextGaussian()));
        read.add(truth.get(i) * (1 + 0.01 * random.nextGaussian()));
      }
      List<Interval> found = FlowDeviations.of(read, 0.01);
      for (int i = 0; i < count; i++) {
        inside += found.get(i).contains(truth.get(i) / median(truth) - 1) ? 1 : 0;
      }
    }
    assertTrue(inside > 5250 && inside < 5600, inside + " of 6000 inside");
  }

  private static double median(List<Double> values) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    int n = sorted.size();
    return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
  }
}
