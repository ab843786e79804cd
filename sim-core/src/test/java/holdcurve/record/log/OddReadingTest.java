package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class OddReadingTest {
  private static GaugeLog log(double from, double step, double... bars) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < bars.length; i++) {
      readings.add(Reading.of(from + i * step, bars[i] * 1e5));
    }
    return new GaugeLog("invented", readings, 0);
  }

  private static List<Integer> odd(GaugeLog log) {
    return OddReading.in(log).stream().filter(OddReading::sure).map(OddReading::index).toList();
  }

  @Test
  void slipsAreFoundWhereverTheyStand() {
    assertEquals(List.of(0), odd(log(0, 30, 19.0, 1.88, 1.85)), "first");
    assertEquals(List.of(3), odd(log(0, 30, 2.0, 1.9, 1.85, 18.0)), "last");
    assertEquals(List.of(1, 2), odd(log(0, 30, 2.0, 19.0, 18.8, 1.85)), "two");
    assertEquals(List.of(1, 2), odd(log(0, 30, 2.0, 0.19, 0.188, 1.85)), "two low");
    assertEquals(List.of(2), odd(log(0, 30, 0.6, 0.55, 5.2, 0.5)), "a low hold");
    assertEquals(List.of(1), odd(log(-4, 2, 0, 20.0, 2.1, 2.0)), "while the pump runs");
  }

  @Test
  void whatAGaugeMayShowIsLeftAlone() {
    assertEquals(List.of(), odd(log(-2, 2, 0, 2.0, 0.2, 0.19)), "a burst hose");
    assertEquals(List.of(), odd(log(0, 30, 2.0, 1.9, 0, 0, 0)), "the needle at its stop");
    assertEquals(List.of(), odd(log(0, 30, 2.0, 0, 1.9)), "a blank written as nought");
    assertEquals(List.of(), odd(log(-6, 2, 0, 0.2, 2.0, 2.0, 1.9)), "a build-up");
    assertEquals(List.of(), odd(log(0, 1, 8.5, 8.3, 8.0, 7.9)), "a dead-headed pump");
    assertEquals(List.of(), odd(log(0, 60, 2.0, 0.02, 0.03, 0.2)), "fuel that warms again");
  }

  /** Any fall that slows down, seen at any interval and down to nought, and any build-up. */
  @Property(tries = 2000, seed = "11")
  void noFallAndNoBuildUpIsRefused(
      @ForAll @DoubleRange(min = 0.3, max = 7) double start,
      @ForAll @DoubleRange(min = 0.1, max = 20) double interval,
      @ForAll @DoubleRange(min = 1, max = 5000) double halving,
      @ForAll @IntRange(min = 0, max = 12) int before) {
    double[] bars = new double[before + 30];
    for (int i = 0; i < bars.length; i++) {
      double exact =
          i < before
              ? start * (1 - Math.pow(0.3, i))
              : start * Math.pow(0.5, (i - before) * interval / halving);
      bars[i] = Math.rint(exact * 100) / 100;
    }
    assertEquals(List.of(), odd(log(-before * interval, interval, bars)));
  }
}
