package holdcurve.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.prior.LearnedUnknowns;
import holdcurve.inference.prior.LearnedUnknowns.Normal;
import holdcurve.inference.prior.LearnedUnknowns.Unknown;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.physics.part.Hose;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What one job of a car teaches the next one. */
class SameCarTest {
  private static final RankingService USUAL =
      new RankingService(FaultCatalogue.load()).verdictOnly();
  private static final Job BOTH =
      JobReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/sound-after-rebuild.job.json"));

  private static Job with(String part) {
    Repair repair = new Repair(LocalDate.of(2026, 4, 11), part, "", "", "");
    return BOTH.withUpkeep(BOTH.upkeep().withRepair(repair));
  }

  /** One hold after the other teaches what both together do. */
  @Test
  void stepByStepIsAllAtOnce() {
    Job first = BOTH.withTests(BOTH.tests().subList(0, 1));
    Job second = BOTH.withTests(BOTH.tests().subList(1, 2));
    LearnedUnknowns one = USUAL.learn(first, 1, Progress.NONE);
    LearnedUnknowns steps = USUAL.after(one, List.of()).learn(second, 1, Progress.NONE);
    LearnedUnknowns atOnce = USUAL.learn(BOTH, 1, Progress.NONE);
    for (Unknown unknown : Unknown.values()) {
      Normal step = steps.of(unknown);
      Normal all = atOnce.of(unknown);
      String what = unknown + ": " + one.of(unknown) + ", " + step + " against " + all;
      assertTrue(Math.abs(step.middle() - all.middle()) < 0.5 * all.deviation(), what);
      assertEquals(1, step.deviation() / all.deviation(), 0.25, what);
    }
  }

  @Test
  void nothingIsNarrowerThanItWasLearnedNorWiderThanUsual() {
    LearnedUnknowns learned = USUAL.learn(BOTH, 1, Progress.NONE);
    LearnedUnknowns later = learned.later(UnknownPriors.usual().drift());
    for (Unknown unknown : Unknown.values()) {
      assertEquals(learned.of(unknown).middle(), later.of(unknown).middle());
      assertTrue(
          later.of(unknown).deviation() > learned.of(unknown).deviation()
              || later.of(unknown).deviation() == 1);
      assertTrue(later.of(unknown).deviation() <= 1);
    }
    assertTrue(later.of(Unknown.SET_PRESSURE).deviation() < 0.9, later.toString());
  }

  @Test
  void renewedPartsForgetTheirs() {
    Set<Unknown> hoses = EnumSet.complementOf(EnumSet.of(Unknown.SET_PRESSURE));
    String hose = BOTH.circuit().partsOf(Hose.KIND).get(0).id();
    assertEquals(Set.of(), SameCar.renewed(BOTH, BOTH));
    assertEquals(hoses, SameCar.renewed(BOTH, with(hose)));
    assertEquals(Set.of(Unknown.SET_PRESSURE), SameCar.renewed(BOTH, with("regulator")));
    assertEquals(Set.of(), SameCar.renewed(BOTH, with("check-valve")));
    assertEquals(EnumSet.allOf(Unknown.class), SameCar.renewed(BOTH, with("")));
  }

  @Test
  void aRankingSaysWhatItStartsFrom() {
    Job next =
        JobReader.read(
            Path.of(System.getProperty("holdcurve.root", ".."), "scenarios/check-valve.job.json"));
    List<String> notes =
        SameCar.ranking(USUAL, List.of(BOTH), next, Progress.NONE)
            .rank(next, 1, Progress.NONE)
            .notes()
            .stream()
            .map(Object::toString)
            .toList();
    assertTrue(
        notes.stream().anyMatch(n -> n.contains("from what the same car showed")), notes::toString);
    List<String> alone =
        SameCar.ranking(USUAL, List.of(), next, Progress.NONE)
            .rank(next, 1, Progress.NONE)
            .notes()
            .stream()
            .map(Object::toString)
            .toList();
    assertFalse(alone.stream().anyMatch(n -> n.contains("same car")), alone::toString);
  }
}
