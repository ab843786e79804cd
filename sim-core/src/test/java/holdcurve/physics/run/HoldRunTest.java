package holdcurve.physics.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Regulator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HoldRunTest {
  private static final double SET = 2e5;
  private static final double FREE_FLOW = Unit.LITRE_PER_MINUTE.toSi(2);
  private static final double GAIN = Unit.LITRE_PER_MINUTE_BAR.toSi(30);

  /** With a regulator that hardly rises with its flow. */
  private static final Circuit CAR = Circuits.SIX_CYLINDER.with("regulator", Regulator.GAIN, GAIN);

  private static final Condition SOUND = Condition.sound(CAR);

  /**
   * First principles: the circuit fills at a rate between what the pump gives free and at 3 bar.
   */
  @Test
  void buildUpTakesAsLongAsThePumpNeedsForWhatTheCircuitHolds() {
    RunRecord run = HoldRun.simulate(SOUND, 20, 30, Set.of(), 0, 0.5);
    double took = 20 + timeOf(run, "regulator opens");
    Network network = NetworkAssembler.assemble(SOUND, Operation.priming(), Detail.FULL);
    double held =
        network.storedVolume(
            network.stateAt(p -> network.layout().node(p).boundary() ? 0 : SET, 0, 0));
    assertTrue(took < held / (FREE_FLOW * (1 - 0.25)), "took " + took + " s for " + held + " m³");
    assertTrue(took > 0.8 * held / FREE_FLOW, "took " + took + " s for " + held + " m³");
  }

  /** A regulator's opening gradient sets how far over its set pressure a flow takes it: Q/G. */
  @Test
  void runningPressureLiesALittleOverTheSetPressure() {
    RunRecord run = HoldRun.simulate(SOUND, 20, 30, Set.of(), 0, 0.5);
    double running = run.at("regulator-inlet")[index(run, -0.5)];
    assertTrue(running > SET, "running at " + running + " Pa");
    assertTrue(running < SET + FREE_FLOW / GAIN, "running at " + running + " Pa");
    assertEquals(run.at("rail")[index(run, -0.5)], run.gauge()[index(run, -0.5)], 10);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 2e3, 3e4, 6e4})
  void afterTheStopItFallsToTheClosingPressure(double drop) {
    Condition condition =
        new Condition(Circuits.withoutWeeps(CAR), List.of())
            .with("regulator", Regulator.RESEAT_DROP, drop);
    RunRecord run = HoldRun.simulate(condition, 20, 4, Set.of(), 0, 0.05);
    double shuts = timeOf(run, "regulator shuts");
    assertTrue(shuts > 0 && shuts < 1, "shuts at " + shuts + " s");
    double before = run.at("regulator-inlet")[index(run, shuts - 0.05)];
    double after = run.at("regulator-inlet")[index(run, shuts + 0.05)];
    assertTrue(before >= SET - drop, before + " Pa before it shuts");
    assertEquals(SET - drop, after, 300, "pressure once it has shut");
  }

  /** Seated, a regulator passes nothing between its closing and its set pressure. */
  @Test
  void aShutRegulatorHoldsBelowItsSetPressure() {
    Condition tight =
        Condition.sound(Circuits.withoutCreep(Circuits.withoutWeeps(CAR)))
            .with("regulator", Regulator.RESEAT_DROP, 3e4);
    RunRecord run = HoldRun.simulate(tight, 20, 600, Set.of(), 0, 5);
    double first = run.at("rail")[index(run, 5)];
    double last = run.at("rail")[index(run, 600)];
    assertEquals(SET - 3e4, first, 300);
    assertEquals(first, last, 1, "after ten minutes");
  }

  /** The fast way, which rankings use, tells the same hold within half of a good reading. */
  @ParameterizedTest
  @ValueSource(doubles = {2e3, 3e4})
  void agreesWithTheFastHold(double drop) {
    Condition leaky =
        SOUND
            .with("regulator", Regulator.RESEAT_DROP, drop)
            .with(new LeakPath("rail", "air", LaminarLaw.throughPoint(5e-9, 2e5)));
    RunRecord run = HoldRun.simulate(leaky, 20, 600, Set.of("return-hose"), 5, 1);
    double running = run.at("rail")[index(run, 0)];
    double[] times = {30, 60, 120, 300, 600};
    HoldSetup setup = HoldSetup.plain(running).clampedAt(5, Set.of("return-hose"));
    double[] fast = new HoldSimulator().readings(leaky, setup, times);
    for (int i = 0; i < times.length; i++) {
      assertEquals(fast[i], run.gauge()[index(run, times[i])], 1e3, "at " + times[i] + " s");
    }
  }

  @Test
  void samplingChangesNothing() {
    RunRecord fine = HoldRun.simulate(SOUND, 10, 60, Set.of("feed-hose"), 5, 0.25);
    RunRecord coarse = HoldRun.simulate(SOUND, 10, 60, Set.of("feed-hose"), 5, 5);
    for (int i = 0; i < coarse.times().length; i++) {
      assertEquals(fine.gauge()[20 * i], coarse.gauge()[i], 0, "at " + coarse.times()[i] + " s");
    }
    assertEquals(fine.events(), coarse.events());
  }

  @Test
  void usualToleranceIsTightEnough() {
    RunPlan plan =
        RunPlan.of(
            RunStep.prime(10),
            RunStep.stop(5),
            RunStep.clamp(60, Circuits.CLAMPABLE, HoldRun.CLAMP_CONDUCTANCE));
    double[] times = {-9.9, -5, -1, 0, 0.05, 0.1, 0.5, 1, 5, 6, 30, 60};
    RunRecord usual = new RunSimulator().simulate(SOUND, plan, times);
    RunRecord tight = new RunSimulator(1e-9).simulate(SOUND, plan, times);
    assertArrayEquals(tight.gauge(), usual.gauge(), 5);
    assertArrayEquals(tight.at("rail"), usual.at("rail"), 5);
  }

  static double timeOf(RunRecord run, String what) {
    return run.events().stream()
        .filter(event -> event.what().equals(what))
        .mapToDouble(RunEvent::time)
        .findFirst()
        .orElseThrow();
  }

  /** The sample nearest to a time. */
  static int index(RunRecord run, double time) {
    int nearest = 0;
    for (int i = 1; i < run.times().length; i++) {
      if (Math.abs(run.times()[i] - time) < Math.abs(run.times()[nearest] - time)) {
        nearest = i;
      }
    }
    return nearest;
  }
}
