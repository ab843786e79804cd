package holdcurve.advice.live;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The shipped scenarios: their readings come from circuits that differ from what their description
 * says, with known faults (see scenarios/README.md).
 */
class SoundHoldTest {
  private static final double SPAN = 600;

  private static Job job(String name) {
    return JobReader.read(Path.of("..", "scenarios", name + ".job.json"));
  }

  private static Expectation expect(Job job, HoldTest test) {
    return SoundHold.expect(job.circuit(), job.gauge(), test, SPAN, 1, Progress.NONE).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "sound-after-rebuild, SOUND",
    "check-valve, LEAKING",
    "low-reseat, FELL_AT_ONCE",
    "rail-loss, LEAKING"
  })
  void theUnclampedHoldIsCalledWhatItIs(String name, LiveAssessment.Kind kind) {
    Job job = job(name);
    HoldTest test = job.tests().get(0);
    assertEquals(kind, LiveAssessment.of(expect(job, test), test.log().hold()).kind());
  }

  @Test
  void nothingIsSaidInTheFirstMinute() {
    Job job = job("sound-after-rebuild");
    HoldTest test = job.tests().get(0);
    Expectation expectation = expect(job, test);
    for (int readings = 0; readings < 3; readings++) {
      List<Reading> so = test.log().hold().subList(0, readings);
      assertEquals(LiveAssessment.Kind.EARLY, LiveAssessment.of(expectation, so).kind());
    }
    assertTrue(expectation.leastLeakAt(30) > 2 * expectation.leastLeakAt(SPAN));
  }

  @Test
  void theBandStartsAtTheFirstReadingAndTheSameSeedGivesTheSame() {
    Job job = job("check-valve");
    HoldTest test = job.tests().get(0);
    HoldCurve band = expect(job, test).band();
    assertEquals(test.log().hold().get(0).pressure(), band.middle()[0], 1);
    assertArrayEquals(band.low(), expect(job, test).band().low());
  }

  @Test
  void oneReadingOutOfLineIsNoLeak() {
    Job job = job("sound-after-rebuild");
    HoldTest test = job.tests().get(0);
    Expectation expectation = expect(job, test);
    List<Reading> misread =
        List.of(Reading.of(0, 2.12e5), Reading.of(120, 1.2e5), Reading.of(540, 1.68e5));
    assertEquals(LiveAssessment.Kind.SOUND, LiveAssessment.of(expectation, misread).kind());
    List<Reading> warm =
        List.of(Reading.of(0, 2.12e5), Reading.of(120, 2.4e5), Reading.of(240, 2.5e5));
    assertEquals(LiveAssessment.Kind.HIGH, LiveAssessment.of(expectation, warm).kind());
  }

  /** Noise so large that, of each dozen readings, two in a row lie outside the band. */
  @Test
  void noiseOfALoggerIsNoLeak() {
    Job job = job("sound-after-rebuild");
    Expectation expectation = expect(job, job.tests().get(0));
    HoldCurve band = expectation.band();
    List<Reading> noisy = logged(band, 1, 1.5 * (band.middle()[9] - band.low()[9]) + 1.5e4);
    long outside =
        IntStream.range(1, noisy.size())
            .filter(i -> below(expectation, noisy.get(i)) && below(expectation, noisy.get(i - 1)))
            .count();
    assertTrue(outside > 10, outside + " times two in a row");
    assertNotEquals(LiveAssessment.Kind.LEAKING, LiveAssessment.of(expectation, noisy).kind());
    assertEquals(AveragedReadings.of(noisy).get(0), AveragedReadings.first(noisy).orElseThrow());
    List<Reading> leaking = logged(band, 0.5, 1e4);
    assertEquals(LiveAssessment.Kind.LEAKING, LiveAssessment.of(expectation, leaking).kind());
  }

  private static boolean below(Expectation expectation, Reading reading) {
    return expectation.below(reading.time(), reading.pressure()) > 0;
  }

  /** Ten readings a second about a share of the middle of a band that falls steadily. */
  private static List<Reading> logged(HoldCurve band, double atTheEnd, double noise) {
    Random random = new Random(5);
    return IntStream.range(0, (int) (10 * SPAN))
        .mapToDouble(i -> 0.1 * i)
        .mapToObj(
            t ->
                Reading.of(
                    t,
                    middle(band, t) * (1 - (1 - atTheEnd) * t / SPAN)
                        + noise * random.nextGaussian()))
        .toList();
  }

  private static double middle(HoldCurve band, double t) {
    double[] time = band.time();
    int k = 1;
    while (k < time.length - 1 && time[k] < t) {
      k++;
    }
    double share = (t - time[k - 1]) / (time[k] - time[k - 1]);
    return band.middle()[k - 1] + share * (band.middle()[k] - band.middle()[k - 1]);
  }

  @Test
  void doubtfulReadingsDoNotCount() {
    Job job = job("sound-after-rebuild");
    Expectation expectation = expect(job, job.tests().get(0));
    Reading low = new Reading(120, 1e5, Double.NaN, Optional.empty(), true);
    List<Reading> readings =
        List.of(
            Reading.of(0, 2.12e5),
            low,
            new Reading(180, 1e5, Double.NaN, Optional.empty(), true),
            Reading.of(540, 1.68e5));
    assertEquals(LiveAssessment.Kind.SOUND, LiveAssessment.of(expectation, readings).kind());
  }

  @Test
  void withoutAReadingNothingIsExpected() {
    Job job = job("sound-after-rebuild");
    HoldTest none = HoldTest.of("none", Set.of(), new GaugeLog("none", List.of(), 0));
    assertTrue(
        SoundHold.expect(job.circuit(), job.gauge(), none, SPAN, 1, Progress.NONE).isEmpty());
  }

  @Test
  void itCanBeStopped() {
    Job job = job("sound-after-rebuild");
    Progress stopped =
        new Progress() {
          @Override
          public void at(double share, String what) {}

          @Override
          public boolean isCancelled() {
            return true;
          }
        };
    assertThrows(
        CancellationException.class,
        () -> SoundHold.expect(job.circuit(), job.gauge(), job.tests().get(0), SPAN, 1, stopped));
  }
}
