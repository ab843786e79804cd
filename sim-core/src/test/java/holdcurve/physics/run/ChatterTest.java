package holdcurve.physics.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.SimulationException;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regulator;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A strong regulator without hysteresis above a weak pump passes more, where it shuts, than reaches
 * it: it opens and shuts hundreds of times a second.
 */
class ChatterTest {
  private static final double SET = 2e5;

  /** What it takes to lift the valve off its seat, beyond the set pressure [Pa]. */
  private static final double STICTION = 500;

  private static final Condition RESTLESS =
      Condition.sound(Circuits.withoutWeeps(Circuits.SIX_CYLINDER))
          .with("regulator", Regulator.RESEAT_DROP, 0)
          .with("regulator", Regulator.GAIN, Unit.LITRE_PER_MINUTE_BAR.toSi(500))
          .with("pump", Pump.FREE_FLOW, Unit.LITRE_PER_MINUTE.toSi(0.3));

  private static final RunPlan PLAN = RunPlan.of(RunStep.prime(120), RunStep.stop(60));

  private static List<RunEvent> valve(RunRecord run) {
    return run.events().stream().filter(one -> one.what().startsWith("regulator")).toList();
  }

  @Test
  void aValveThatChattersIsFollowedOnAverage() {
    RunRecord run = HoldRun.simulate(RESTLESS, 120, 60, Set.of(), 0, 0.5);
    List<RunEvent> valve = valve(run);
    assertEquals(1, valve.stream().filter(e -> e.what().equals("regulator chatters")).count());
    assertTrue(valve.size() < 40, valve::toString);
    double running = run.at("regulator-inlet")[HoldRunTest.index(run, -0.5)];
    assertTrue(running > SET && running < SET + STICTION, "between its two pressures: " + running);
    assertEquals("regulator shuts", valve.get(valve.size() - 1).what());
    assertTrue(valve.get(valve.size() - 1).time() > 0, "it is followed again after the stop");
    double held = run.at("regulator-inlet")[HoldRunTest.index(run, 2)];
    assertEquals(SET, held, 300, "where it shuts");
  }

  /** The swings that are still followed one by one are the yardstick for their average. */
  @Test
  void theAverageIsThatOfTheSwings() {
    RunRecord run = HoldRun.simulate(RESTLESS, 120, 1, Set.of(), 0, 0.5);
    List<RunEvent> valve = valve(run);
    double from = valve.get(4).time();
    double to = valve.get(18).time();
    double[] times = new double[400];
    Arrays.setAll(times, i -> from + (to - from) * i / (times.length - 1));
    RunPlan plan = RunPlan.of(RunStep.prime(120), RunStep.stop(1));
    RunRecord fine = new RunSimulator().simulate(RESTLESS, plan, times);
    double swings = Arrays.stream(fine.at("regulator-inlet")).average().orElseThrow();
    double average = run.at("regulator-inlet")[HoldRunTest.index(run, -0.5)];
    assertEquals(swings, average, STICTION / 2);
  }

  @Test
  void aSlowValveIsFollowedStepByStep() {
    ChatterWatch watch = new ChatterWatch();
    double apart = 1.01 * ChatterWatch.SHORT / ChatterWatch.FOLLOWED;
    for (int i = 0; i < 1000; i++) {
      assertFalse(watch.chatters("regulator", i * apart), "after " + i + " changes");
    }
  }

  /** However a run gets lost, it ends, and says where and when. */
  @Test
  void aRunThatGetsNowhereEndsInASentence() {
    SimulationException refusal =
        assertThrows(
            SimulationException.class,
            () -> new RunSimulator(1e-6, 50).simulate(RESTLESS, PLAN, new double[] {1}));
    String said = refusal.getMessage();
    assertTrue(said.startsWith(Circuits.SIX_CYLINDER.title()), said);
    assertTrue(
        said.matches(".* can't be simulated beyond \\d.* s before the pump stop: the .* at .*"),
        said);
  }
}
