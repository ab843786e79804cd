package holdcurve.inference.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.inference.prior.UnknownPriors;
import holdcurve.record.job.GaugeSpec;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * The power α/(α + n) of Miller and Dunson (J. Am. Stat. Assoc. 114 (2019) 1113), and what it is
 * for: in units of reading errors, a wrong curve lies no farther off for a finer gauge.
 */
class CoarseningTest {
  private static final GaugeSpec NEEDLE = GaugeSpec.usual();
  private static final GaugeSpec LOGGER = new GaugeSpec(4e5, 0.005, 500);

  private static double power(int tests, GaugeSpec gauge) {
    return Coarsening.power(tests, gauge);
  }

  @Test
  void oddsAgainstOneLevelOffWithMoreTests() {
    ToDoubleFunction<Integer> counted = tests -> tests * power(tests, NEEDLE);
    assertTrue(counted.applyAsDouble(4) > counted.applyAsDouble(1));
    assertTrue(counted.applyAsDouble(1000) < 2 * counted.applyAsDouble(4));
  }

  @Test
  void aCoarserNeedleCountsAsTheUsualOneDoes() {
    assertEquals(1.0 / 5, power(4, new GaugeSpec(4e5, 0.025, 5e3)), 1e-12);
    assertEquals(1.0 / 5, power(4, NEEDLE), 0.01);
  }

  /** A logger's readings, four times as precise in the square, can't add up to four tests' odds. */
  @Test
  void aLoggerIsNotTakenAtItsWordWhereTheCurveIsLessPrecise() {
    UnknownPriors usual = UnknownPriors.usual();
    double seen = Math.pow(usual.modelError() / usual.readingDeviation(LOGGER, 1), 2);
    assertTrue(seen > 3);
    assertEquals(1 / (1 + 4 * seen), power(4, LOGGER), 1e-12);
    assertTrue(power(4, LOGGER) * seen < 1.5 * power(4, NEEDLE));
  }
}
