package holdcurve.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.CheckVerdict.Kind;
import holdcurve.advice.check.RepairCheckService;
import holdcurve.calibration.blind.BlindCases;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How often a check of one hold without clamps says "holds" of a circuit that leaks, and "loses" of
 * a sound one, on cases made by a simulator whose physics are not the program's. A short run here;
 * {@code -Pcalibrate} makes it hundreds of cases.
 */
class RepairCheckScoreTest {
  /** A short run checks a few cases only: each is a ranking. */
  private static final int CASES =
      Math.max(3, Integer.getInteger("holdcurve.calibration.cases", 12) / 3);

  private static final long FIRST_SEED = Long.getLong("holdcurve.calibration.seed", 1000);

  /** A leak of this size is worth a repair: 3 drops a minute [m³/s]. */
  private static final double MATTERS = 0.1e-6 / 60;

  /** Likewise, of a regulator that shuts low [Pa]. */
  private static final double MATTERS_LOW = 0.2e5;

  @TempDir private Path folder;

  private final RepairCheckService checks = RepairCheckService.of(FaultCatalogue.load());

  private Kind check(Job job) {
    return checks.check(repaired(job), Optional.empty(), 1, Progress.NONE).verdict().kind();
  }

  /** The same job, held the day after a repair. */
  private static Job repaired(Job job) {
    Repair repair = new Repair(LocalDate.of(2026, 4, 11), "", "", "", "");
    return job.withUpkeep(job.upkeep().withRepair(repair))
        .withTests(job.tests().stream().map(RepairCheckScoreTest::dated).toList());
  }

  private static HoldTest dated(HoldTest test) {
    return new HoldTest(
        test.id(),
        test.clamped(),
        test.clampTime(),
        test.primeTime(),
        test.fuelTemperature(),
        test.log(),
        "2026-04-12",
        test.notes());
  }

  @Test
  void answersAreSeldomWrong() {
    Map<Kind, Integer> sound = new EnumMap<>(Kind.class);
    Map<Kind, Integer> faulty = new EnumMap<>(Kind.class);
    for (int i = 0; i < CASES; i++) {
      GeneratedCase generated = new BlindCases(folder).make(FIRST_SEED + i, 1);
      if (generated.isSound()) {
        sound.merge(check(generated.job()), 1, Integer::sum);
      } else if (matters(generated)) {
        faulty.merge(check(generated.job()), 1, Integer::sum);
      }
    }
    String said = "sound circuits: " + sound + "; faulty ones: " + faulty;
    System.out.println("check of one hold: " + said);
    assertTrue(share(sound, Kind.FAULTY) <= 0.15, said);
    assertTrue(share(faulty, Kind.HOLDS) <= 0.05, said);
  }

  private static boolean matters(GeneratedCase generated) {
    boolean low = generated.faults().get(0).equals("regulator-low-reseat");
    return generated.size() >= (low ? MATTERS_LOW : MATTERS);
  }

  private static double share(Map<Kind, Integer> counts, Kind kind) {
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    return all == 0 ? 0 : counts.getOrDefault(kind, 0) / (double) all;
  }

  /** Three minutes prove nothing where five are asked for. */
  @Test
  void aShortHoldOfASoundCircuitIsNoProof() {
    long seed = FIRST_SEED;
    while (!new BlindCases(folder).make(seed, 1).isSound()) {
      seed++;
    }
    Job job = new BlindCases(folder).make(seed, 1).job();
    assertEquals(Kind.CANNOT_SAY, check(job.withTests(List.of(cut(job.tests().get(0), 180)))));
  }

  private static HoldTest cut(HoldTest test, double end) {
    List<Reading> kept = test.log().hold().stream().filter(r -> r.time() <= end).toList();
    return HoldTest.of(test.id(), test.clamped(), new GaugeLog("cut", kept, 0));
  }
}
