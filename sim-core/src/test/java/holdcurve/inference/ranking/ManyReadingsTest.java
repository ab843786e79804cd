package holdcurve.inference.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.number.Interval;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CircuitReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * A curve that no hypothesis gives exactly, read fifty times or five thousand times: the
 * hundredfold readings must not make the answer a hundred times surer.
 */
class ManyReadingsTest {
  private static final double SPAN = 600;
  private static final GaugeSpec LOGGER = new GaugeSpec(4e5, 0.016, 2e3);

  /**
   * A slow leak with a wave of 8 mbar on it, such as a fan that comes and goes may give: invented.
   */
  private static double pressure(double time) {
    double sinking = 1.98e5 - 0.5e5 * -Math.expm1(-time / 500);
    return sinking + 800 * Math.sin(2 * Math.PI * time / 220);
  }

  private static Ranking ranked(int count, long seed) {
    Random random = new Random(7);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double time = SPAN * i / (count - 1);
      double eye = 0.3 * LOGGER.resolution() * random.nextGaussian();
      double read = Math.rint((pressure(time) + eye) / LOGGER.resolution()) * LOGGER.resolution();
      readings.add(Reading.of(time, read));
    }
    HoldTest hold = HoldTest.of("hold", Set.of(), new GaugeLog("invented", readings, 0));
    Circuit circuit =
        CircuitReader.read(
            Path.of(
                System.getProperty("holdcurve.root", ".."),
                "scenarios/circuits/six-cylinder-return-line.circuit.json"));
    Job job = new Job("invented", circuit, LOGGER, List.of(hold), Map.of(), List.of());
    FaultCatalogue drip = new FaultCatalogue(List.of(new InventedJob.Drip()), List.of());
    FaultPriors even = new FaultPriors(Map.of("drip", 0.5), 0.5, 1, 1, 1);
    return new RankingService(drip, even, 1).rank(job, seed, Progress.NONE);
  }

  private static double width(Ranking ranking) {
    Interval leak = ranking.suspect("drip@rail").leak().orElseThrow();
    return Math.log(leak.high() / leak.low());
  }

  private static double odds(Ranking ranking) {
    double none = ranking.suspect(Suspect.NONE).probability();
    return Math.log((1 - none) / none);
  }

  /** Over several seeds: a range comes from draws, and one is off by a fifth now and then. */
  private static double mean(int count, ToDoubleFunction<Ranking> of) {
    return LongStream.rangeClosed(1, 4)
        .mapToObj(seed -> ranked(count, seed))
        .mapToDouble(of)
        .average()
        .orElseThrow();
  }

  /** Independent readings would narrow the range tenfold and multiply the log odds by up to 100. */
  @Test
  void aHundredTimesTheReadingsGiveAboutTheSameCertainty() {
    assertEquals(mean(50, ManyReadingsTest::odds), mean(5000, ManyReadingsTest::odds), 1.5);
    double few = mean(50, ManyReadingsTest::width);
    double many = mean(5000, ManyReadingsTest::width);
    assertTrue(many > 0.6 * few && many < 1.3 * few, few + " and " + many);
  }
}
