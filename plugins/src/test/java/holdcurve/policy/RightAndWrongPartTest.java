package holdcurve.policy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.RepairCheckService;
import holdcurve.advice.plan.CheapestOrder;
import holdcurve.advice.plan.CostPlan;
import holdcurve.advice.plan.Planner;
import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.RepairChances;
import holdcurve.advice.whatif.RepairOffer;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.JobReader;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.ranking.RankingService;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.part.Hose;
import holdcurve.record.job.EyeReadings;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The shipped scenario with a leaking check valve: the right part renewed passes the check, the
 * wrong one doesn't, and the chances said so beforehand.
 */
class RightAndWrongPartTest {
  private static final RepairOffer RIGHT = offer("new check valve", "check-valve", 45);
  private static final RepairOffer WRONG = offer("new regulator", "regulator", 95);
  private static final FaultCatalogue FAULTS = FaultCatalogue.load();
  private static final RankingService RANKINGS = new RankingService(FAULTS);

  private static Job job;
  private static Posterior posterior;
  private static RepairChances chances;

  private static RepairOffer offer(String name, String part, double price) {
    return new RepairOffer(name, Optional.of(part), List.of(), price, 30);
  }

  @BeforeAll
  static void readAndRank() {
    job =
        JobReader.read(
            Path.of(System.getProperty("holdcurve.root"), "scenarios/check-valve.job.json"));
    posterior = RANKINGS.believe(job, 1, Planner.DRAWS, Progress.NONE);
    chances =
        new RepairChances(
            posterior.posterior(), job.circuit(), job.upkeep().pass(), List.of(RIGHT, WRONG), 1);
  }

  /** The car itself, with hoses a little stiffer than described, read by eye. */
  private static Job after(boolean stillLeaking) {
    Circuit car =
        job.circuit()
            .map(
                part ->
                    part.kind() == Hose.KIND
                        ? part.with(Hose.SLOW_CREEP, 0.7 * part.value(Hose.SLOW_CREEP))
                        : part);
    Condition condition = Condition.sound(car);
    if (stillLeaking) {
      LeakFault leak = FAULTS.byId("check-valve-seat").orElseThrow();
      double[] size = {Unit.MILLILITRE_PER_MINUTE.toSi(0.27), 0.4};
      condition = leak.apply(condition, leak.sites(car).get(0), size);
    }
    double[] times = IntStream.rangeClosed(0, 20).mapToDouble(i -> 30 * i).toArray();
    double[] needle =
        new HoldSimulator(Detail.FULL, 1e-6).readings(condition, HoldSetup.plain(2.06e5), times);
    double[] read = EyeReadings.of(needle, job.gauge(), 5);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      readings.add(Reading.of(times[i], read[i]));
    }
    List<HoldTest> tests = new ArrayList<>(job.tests());
    String last = tests.get(tests.size() - 1).id();
    tests.add(HoldTest.of("after", Set.of(), new GaugeLog("after", readings, 0)));
    Repair repair = new Repair(LocalDate.of(2026, 4, 11), "", "", last, "a part renewed");
    return job.withTests(tests).withUpkeep(job.upkeep().withRepair(repair));
  }

  private static CheckVerdict.Kind check(Job repaired) {
    return new RepairCheckService(RANKINGS, FAULTS)
        .check(repaired, Optional.empty(), 1, Progress.NONE)
        .verdict()
        .kind();
  }

  @Test
  void rightPartPassesTheCheckAsForetold() {
    assertTrue(chances.passes(1) > 0.5, "chance " + chances.passes(1));
    assertEquals(CheckVerdict.Kind.HOLDS, check(after(false)));
  }

  @Test
  void wrongPartFailsTheCheckAsForetold() {
    assertTrue(chances.passes(2) < 0.05, "chance " + chances.passes(2));
    assertNotEquals(CheckVerdict.Kind.HOLDS, check(after(true)));
  }

  @Test
  void cheapestOrderBeginsWithTheRightPart() {
    PriceList prices = new PriceList("crowns", 60, List.of(RIGHT, WRONG));
    CostPlan order =
        CheapestOrder.of(Planner.planHolds(posterior, 1, Progress.NONE), chances, prices);
    assertEquals("new check valve", order.first().orElseThrow().action());
    assertTrue(order.expectedCost() <= order.withoutTests());
  }
}
