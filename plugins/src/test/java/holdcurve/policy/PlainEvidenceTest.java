package holdcurve.policy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What must not overturn the answer about the shipped sound job, and what must. */
class PlainEvidenceTest {
  private static final Job SOUND =
      JobReader.read(
          Path.of(System.getProperty("holdcurve.root", ".."))
              .resolve("scenarios/sound-after-rebuild.job.json"));

  private static final HoldTest BASE = SOUND.tests().get(0);

  private static Ranking rank(Job job) {
    return rank(job, FaultPriors.shipped());
  }

  private static Ranking rank(Job job, FaultPriors priors) {
    return new RankingService(FaultCatalogue.load(), priors, 2)
        .verdictOnly()
        .rank(job, 1, Progress.NONE);
  }

  private static double sound(Ranking ranking) {
    return ranking.suspect(Suspect.NONE).probability();
  }

  private static Job withBase(List<Reading> readings) {
    return SOUND.withTests(
        List.of(HoldTest.of(BASE.id(), Set.of(), new GaugeLog("changed", readings, 0))));
  }

  private static Job moved(DoubleUnaryOperator by) {
    return withBase(
        BASE.log().hold().stream()
            .map(r -> Reading.of(r.time(), r.pressure() + by.applyAsDouble(r.time())))
            .toList());
  }

  @Test
  void whatNoCircuitDoesIsExplainedByNothing() {
    Ranking wave = rank(moved(t -> 0.15e5 * Math.sin(2 * Math.PI * t / 200)));
    assertEquals(Verdict.Kind.UNEXPLAINED, wave.verdict().kind(), wave.verdict().sentence());
    Ranking step = rank(moved(t -> t > 290 ? -0.16e5 : 0));
    assertEquals(Verdict.Kind.UNEXPLAINED, step.verdict().kind(), step.verdict().sentence());
  }

  @Test
  void aThermometerInWholeDegreesOverturnsNothing() {
    double without = sound(rank(moved(t -> 0)));
    for (double drift : new double[] {2, -2}) {
      List<Reading> readings = new ArrayList<>();
      for (Reading r : BASE.log().hold()) {
        double kelvin = 295.15 + Math.rint(drift * r.time() / 600);
        readings.add(new Reading(r.time(), r.pressure(), kelvin, Optional.empty(), false));
      }
      Ranking with = rank(withBase(readings));
      assertEquals(without, sound(with), 0.2, "drift " + drift);
      assertNotEquals(Verdict.Kind.LEAK, with.verdict().kind());
    }
  }

  @Test
  void holdsBrokenOffAfterAMinuteChangeNothing() {
    List<HoldTest> tests = new ArrayList<>(SOUND.tests());
    double before = sound(rank(SOUND));
    for (int i = 0; i < 4; i++) {
      List<Reading> first =
          BASE.log().hold().stream().filter(reading -> reading.time() <= 60).toList();
      tests.add(HoldTest.of("broken off " + i, Set.of(), new GaugeLog("short", first, 0)));
    }
    assertEquals(before, sound(rank(SOUND.withTests(tests))), 0.005);
  }

  @Test
  void rarerFaultsMakeACircuitSounder() {
    FaultPriors usual = FaultPriors.shipped();
    Map<String, Double> rarer = new HashMap<>();
    usual.rates().forEach((id, rate) -> rarer.put(id, rate / 20));
    FaultPriors rare =
        new FaultPriors(
            rarer, usual.usualRate() / 20, usual.soundTested(), usual.soundTestedAfterRepair(), 2);
    assertTrue(sound(rank(SOUND, rare)) > 0.98);
  }
}
