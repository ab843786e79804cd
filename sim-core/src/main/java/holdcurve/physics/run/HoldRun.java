package holdcurve.physics.run;

import holdcurve.common.input.Require;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.network.Operation;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The usual test in one call: prime, stop the pump, clamp, watch. */
public final class HoldRun {
  /** What a well-set clamp lets past: assumed, 0.001 mL/min at 2 bar [m³/(s·Pa)]. */
  public static final double CLAMP_CONDUCTANCE = 1e-9 / 60 / 2e5;

  private HoldRun() {}

  /**
   * Fuel and surroundings stay at 20 °C.
   *
   * @param primeSeconds how long the pump runs [s], above zero
   * @param holdSeconds how long the gauge is watched after the pump stop [s], above zero
   * @param clamped ids of hoses to clamp; may be empty
   * @param clampTime when the clamps go on, after the pump stop [s]; unused without clamps
   * @param step time between samples [s]; the first is taken when the pump starts
   * @return samples from −primeSeconds to holdSeconds
   */
  public static RunRecord simulate(
      Condition condition,
      double primeSeconds,
      double holdSeconds,
      Set<String> clamped,
      double clampTime,
      double step) {
    List<RunStep> steps = new ArrayList<>(List.of(RunStep.prime(primeSeconds)));
    if (clamped.isEmpty() || clampTime >= holdSeconds) {
      steps.add(RunStep.stop(holdSeconds));
    } else {
      clamped.forEach(condition.circuit()::part);
      steps.add(RunStep.stop(clampTime));
      steps.add(RunStep.clamp(holdSeconds - clampTime, clamped, CLAMP_CONDUCTANCE));
    }
    RunPlan plan = new RunPlan(Operation.holding(), 0, steps);
    return new RunSimulator().simulate(condition, plan, times(-primeSeconds, holdSeconds, step));
  }

  private static double[] times(double first, double last, double step) {
    Require.positive(step, "time between samples", "s");
    int count = (int) Math.floor((last - first) / step * (1 + 1e-12)) + 1;
    double[] times = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = Math.min(first + i * step, last);
    }
    return times;
  }
}
