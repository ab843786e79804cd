package holdcurve.physics.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.network.Region;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Regulator;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RunSimulatorTest {
  private static final Circuit TIGHT = Circuits.withoutWeeps(Circuits.SIX_CYLINDER);
  private static final double SET = 2e5;

  /** A hot soak lifts the trapped pressure up to the regulator, which lets it out bit by bit. */
  @Test
  void hotSoakLiftsThePressureToTheRegulator() {
    RunPlan plan = RunPlan.of(RunStep.prime(20), RunStep.stop(900).warming(Region.ENGINE, 20));
    RunRecord run = new RunSimulator().simulate(Condition.sound(TIGHT), plan, seconds(-20, 900, 5));
    double highest = Arrays.stream(run.at("rail")).skip(5).max().orElseThrow();
    assertTrue(highest > SET - 1e3 && highest < SET + 1e3, "highest " + highest + " Pa");
    List<String> valve =
        run.events().stream()
            .map(RunEvent::what)
            .filter(what -> what.startsWith("regulator"))
            .toList();
    assertTrue(valve.size() > 4, "it opens and shuts: " + valve);
    for (int i = 0; i < valve.size(); i++) {
      assertEquals(i % 2 == 0 ? "regulator opens" : "regulator shuts", valve.get(i));
    }
  }

  /** Fuel that shrinks sucks more through pump and check valve, once that is pushed open. */
  @Test
  void coolingDrawsFuelInThroughTheCheckValve() {
    RunPlan plan = RunPlan.of(RunStep.prime(20), RunStep.stop(7200).warming(Region.ENGINE, -60));
    RunRecord run =
        new RunSimulator().simulate(Condition.sound(TIGHT), plan, seconds(-20, 7200, 60));
    double[] rail = run.at("rail");
    double crack = TIGHT.part("check-valve").value(CheckValve.CRACK);
    assertEquals(-crack, rail[rail.length - 1], 4e3, "at the end");
  }

  /** It follows the manifold one to one, but for the pump that gives more at less pressure. */
  @Test
  void referencedRegulatorFollowsTheManifold() {
    double[] idle = {0, 0};
    for (int referenced = 0; referenced < 2; referenced++) {
      Circuit circuit =
          Circuits.SIX_CYLINDER
              .with("regulator", Regulator.MANIFOLD_REFERENCE, referenced)
              .with("regulator", Regulator.GAIN, Unit.LITRE_PER_MINUTE_BAR.toSi(30));
      RunPlan plan = RunPlan.of(RunStep.prime(5), RunStep.engine(10, 0.05, -6e4), RunStep.stop(1));
      RunRecord run =
          new RunSimulator().simulate(Condition.sound(circuit), plan, new double[] {-0.1});
      idle[referenced] = run.at("rail")[0];
    }
    assertEquals(-6e4, idle[1] - idle[0], 1e3);
  }

  @Test
  void injectionLowersTheFlowThroughTheRegulator() {
    RunPlan plan = RunPlan.of(RunStep.prime(10), RunStep.engine(10, 0.8, 0), RunStep.stop(10));
    RunRecord run =
        new RunSimulator().simulate(Condition.sound(TIGHT), plan, new double[] {-10.1, -0.1, 5});
    assertTrue(run.at("rail")[1] < run.at("rail")[0], "less fuel is left to spill");
    assertEquals(
        List.of("pump on", "regulator opens", "engine runs", "pump stops"),
        run.events().stream().map(RunEvent::what).filter(what -> !what.endsWith("shuts")).toList());
  }

  @Test
  void timeZeroIsTheLastPumpStop() {
    RunPlan plan =
        RunPlan.of(
            RunStep.rest(3), RunStep.prime(5), RunStep.stop(4), RunStep.prime(6), RunStep.stop(10));
    assertEquals(18, plan.pumpStop());
    assertEquals(28, plan.duration());
    RunRecord run = new RunSimulator().simulate(Condition.sound(TIGHT), plan, seconds(-18, 10, 1));
    assertArrayEquals(new double[] {0, 0, 0}, Arrays.copyOf(run.gauge(), 3), 1e-9);
    assertEquals(-15, run.events().get(1).time());
  }

  @Test
  void refusesWhatItCannotDo() {
    RunPlan plan = RunPlan.of(RunStep.prime(5), RunStep.stop(5));
    Condition sound = Condition.sound(TIGHT);
    RunSimulator simulator = new RunSimulator();
    assertRefused("must be -5.0 to 5.0", () -> simulator.simulate(sound, plan, seconds(-6, 5, 1)));
    assertRefused(
        "sampling times must rise", () -> simulator.simulate(sound, plan, new double[] {1, 1}));
    Condition lost = sound.with(new LeakPath("nowhere", "air", new LaminarLaw(1e-15)));
    assertRefused("nowhere", () -> simulator.simulate(lost, plan, new double[] {1}));
    Circuit blind =
        new Circuit(
            "blind",
            TIGHT.fluid(),
            TIGHT.parts().stream().filter(part -> part.kind() != Gauge.KIND).toList());
    assertRefused(
        "blind has no gauge",
        () -> simulator.simulate(Condition.sound(blind), plan, new double[] {1}));
    assertRefused("at least one step", RunPlan::of);
    assertRefused("duration of 'rest' is 0.0", () -> RunStep.rest(0));
  }

  private static void assertRefused(String part, Runnable call) {
    String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
    assertTrue(message.contains(part), message);
  }

  private static double[] seconds(int first, int last, int step) {
    return IntStream.rangeClosed(0, (last - first) / step)
        .mapToDouble(i -> first + i * step)
        .toArray();
  }
}
