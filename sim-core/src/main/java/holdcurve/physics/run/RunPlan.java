package holdcurve.physics.run;

import holdcurve.physics.network.Operation;
import java.util.List;

/**
 * What is done with a circuit that has stood open and without pressure.
 *
 * @param before operation before the first step
 * @param warmth temperature of the fuel under the bonnet over its surroundings at the start [K]
 * @param steps one after another, at least one
 */
public record RunPlan(Operation before, double warmth, List<RunStep> steps) {
  public RunPlan {
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a run needs at least one step");
    }
  }

  /** A plan for fuel at a steady 20 °C. */
  public static RunPlan of(RunStep... steps) {
    return new RunPlan(Operation.holding(), 0, List.of(steps));
  }

  /** From the start of the first step to the end of the last [s]. */
  public double duration() {
    return steps.stream().mapToDouble(RunStep::duration).sum();
  }

  /**
   * When the pump last stops, from the start of the first step [s]: time zero of a gauge log. Zero
   * if it never does.
   */
  public double pumpStop() {
    double time = 0;
    double stop = 0;
    Operation operation = before;
    for (RunStep step : steps) {
      boolean ran = operation.pumpRunning();
      operation = step.change().apply(operation);
      if (ran && !operation.pumpRunning()) {
        stop = time;
      }
      time += step.duration();
    }
    return stop;
  }
}
