package holdcurve.inference.data;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.job.GaugeSpec;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Averages of stretches against the readings that they stand for: for curves all but straight over
 * a stretch, its mean and its weight are sufficient, so what the averages say for one leak against
 * another is what all readings say, each with its share of the weight.
 */
class ReadingSeriesTest {
  private static final GaugeSpec LOGGER = new GaugeSpec(4e5, 0.016, 100);
  private static final double SPAN = 7200;
  private static final double TRUE_TIME = 5000;

  private static double curve(double time, double timeConstant) {
    return 2e5 * Math.exp(-time / timeConstant);
  }

  private static List<Reading> log(double every) {
    Random random = new Random(3);
    List<Reading> log = new ArrayList<>();
    for (int i = 0; i * every <= SPAN; i++) {
      double time = i * every;
      log.add(Reading.of(time, curve(time, TRUE_TIME) + 400 * random.nextGaussian()));
    }
    return log;
  }

  /** Weighted squares about one curve less those about another [Pa²]. */
  private static double forOneAgainst(ReadingSeries of, double one, double other) {
    double sum = 0;
    for (int i = 0; i < of.time().length; i++) {
      double a = of.pressure()[i] - curve(of.time()[i], one);
      double b = of.pressure()[i] - curve(of.time()[i], other);
      sum += of.weight()[i] * (b * b - a * a);
    }
    return sum;
  }

  /** The same from every reading: those of a stretch share its weight. */
  private static double fromAll(List<Reading> log, ReadingSeries of, double one, double other) {
    double sum = 0;
    int first = 0;
    for (int point = 0; point < of.time().length; point++) {
      double limit = SPAN * Math.pow((point + 1) / 60.0, 2);
      int last = first;
      double stretch = 0;
      while (last < log.size() && (log.get(last).time() <= limit || point == 59)) {
        Reading reading = log.get(last++);
        double a = reading.pressure() - curve(reading.time(), one);
        double b = reading.pressure() - curve(reading.time(), other);
        stretch += b * b - a * a;
      }
      sum += of.weight()[point] * stretch / (last - first);
      first = last;
    }
    assertEquals(log.size(), first, "every reading stands in one stretch");
    return sum;
  }

  @Test
  void averagesSayOfTwoLeaksWhatAllReadingsSay() {
    List<Reading> log = log(0.1);
    ReadingSeries series = ReadingSeries.of(log, LOGGER);
    assertEquals(60, series.time().length);
    for (double other : new double[] {4000, 4800, 5200, 7000}) {
      double expected = fromAll(log, series, TRUE_TIME, other);
      assertTrue(expected > 0, "the readings speak for the true curve");
      assertEquals(expected, forOneAgainst(series, TRUE_TIME, other), 0.01 * expected);
    }
  }

  @Test
  void aShortLogIsTakenAsItIs() {
    List<Reading> log = log(SPAN / 59);
    ReadingSeries series = ReadingSeries.of(log, LOGGER);
    assertArrayEquals(log.stream().mapToDouble(Reading::pressure).toArray(), series.pressure());
    assertArrayEquals(log.stream().mapToDouble(Reading::time).toArray(), series.time());
  }
}
