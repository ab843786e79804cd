package holdcurve.physics.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Pulses against the average over time that the rest of the program uses. */
class PulseTrainTest {
  private static final Circuit CIRCUIT =
      Circuits.withoutCreep(Circuits.withoutWeeps(Circuits.SIX_CYLINDER));
  private static final PulseTrain PULSES = new PulseTrain(10, 0.02, 0.005, 0.001);

  /**
   * By the square-root law with a constant compliance, √p falls in proportion to the time the
   * injectors are open, however it is cut up; compliance here changes a little along the way.
   */
  @Test
  void pulsesWithThePumpStoppedTakeAsMuchAsTheirAverage() {
    double pulsed = afterwards(PULSES.steps(0));
    RunStep average =
        new RunStep("averaged", 0.2, before -> before.withEngine(PULSES.duty(), 0), Map.of());
    double averaged = afterwards(List.of(average));
    double untouched = afterwards(List.of(RunStep.rest(0.2)));
    assertTrue(untouched - averaged > 2e4, "drop " + (untouched - averaged) + " Pa");
    assertEquals(untouched - averaged, untouched - pulsed, 0.01 * (untouched - averaged));
  }

  private static double afterwards(List<RunStep> middle) {
    List<RunStep> steps = new ArrayList<>(List.of(RunStep.prime(5), RunStep.stop(10)));
    steps.addAll(middle);
    steps.add(new RunStep("shut", 2, before -> before.withEngine(0, 0), Map.of()));
    RunPlan plan = RunPlan.of(steps.toArray(RunStep[]::new));
    double last = plan.duration() - plan.pumpStop();
    RunRecord run =
        new RunSimulator().simulate(Condition.sound(CIRCUIT), plan, new double[] {last});
    return run.at("rail")[0];
  }

  /** With the pump on, the rail dips by less than the pulse's volume over the compliance. */
  @Test
  void railRipplesWithThePumpOn() {
    List<RunStep> steps = new ArrayList<>(List.of(RunStep.prime(5)));
    steps.addAll(PULSES.steps(0));
    steps.add(RunStep.stop(1));
    RunPlan plan = RunPlan.of(steps.toArray(RunStep[]::new));
    double lastPulse = -PULSES.period();
    RunRecord run =
        new RunSimulator()
            .simulate(
                Condition.sound(CIRCUIT),
                plan,
                new double[] {lastPulse + 0.0009, lastPulse + PULSES.width(), -1e-4});
    double[] rail = run.at("rail");
    assertTrue(rail[1] < rail[0] - 50, "dips while open: " + rail[0] + " to " + rail[1]);
    assertTrue(rail[2] > rail[1] + 50, "recovers while shut: " + rail[1] + " to " + rail[2]);
  }

  @Test
  void refusesPulsesThatOverlap() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> new PulseTrain(1, 0.01, 0.02, 0))
            .getMessage();
    assertTrue(message.contains("pulse width is 0.02 [s]"), message);
  }
}
