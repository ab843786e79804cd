package holdcurve.physics.hold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.fluid.PureLiquid;
import holdcurve.physics.network.Operation;
import holdcurve.physics.network.SimulationException;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Rail;
import holdcurve.physics.run.RunPlan;
import holdcurve.physics.run.RunSimulator;
import holdcurve.physics.run.RunStep;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * n-Heptane that warms in a rigid wall rises by α·K_T = 1.231e-3 · 715 MPa = 8.80 bar a kelvin at
 * 20 °C: from the equation of state of Span and Wagner (Int. J. Thermophys. 24 (2003) 41). So two
 * kelvin stay below twenty bar, and three don't.
 */
class PressureLimitTest {
  private static final Circuit RIGID =
      new Circuit(
          "rigid",
          PureLiquid.nHeptane(),
          List.of(
              Part.of(Rail.KIND, "rail", "a", "a", Map.of(Rail.VOLUME, 100e-6)),
              Part.of(Gauge.KIND, "gauge", "a", "a", Map.of(Gauge.AIR, 0.0))));

  private static final double[] TIMES = {0, 1e4, 2e4, 1e5};

  @Test
  void belowTheLimitThereIsACurve() {
    double[] shown = readings(-2);
    assertEquals(2 * 8.80e5, shown[3], 0.015 * 2 * 8.80e5);
  }

  @Test
  void beyondItThereIsASentence() {
    SimulationException thrown = assertThrows(SimulationException.class, () -> readings(-3));
    assertEquals(
        "rigid can't be simulated beyond 10000 s: the pressure at a climbs past 20 bar, more than"
            + " hoses and joints hold; fuel that is shut in and warms rises by several bar for each"
            + " kelvin where no hose, damper or trapped air gives: look at the temperatures, the"
            + " clamps and the values stated for those.",
        thrown.getMessage());
  }

  @Test
  void wholeRunsStopThereToo() {
    RunPlan plan = new RunPlan(Operation.holding(), -3, List.of(RunStep.stop(1e5)));
    SimulationException thrown =
        assertThrows(
            SimulationException.class,
            () -> new RunSimulator().simulate(Condition.sound(RIGID), plan, new double[] {0, 1e5}));
    assertEquals(0, thrown.getMessage().indexOf("rigid can't be simulated beyond "));
  }

  private static double[] readings(double warmth) {
    HoldSetup setup = new HoldSetup(0, 0, warmth, Operation.holding(), Set.of(), 0, 0, 0);
    return new HoldSimulator().readings(Condition.sound(RIGID), setup, TIMES);
  }
}
