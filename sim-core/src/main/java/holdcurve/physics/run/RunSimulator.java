package holdcurve.physics.run;

import holdcurve.common.input.Require;
import holdcurve.physics.circuit.Condition;
import java.util.List;

/** Computes a whole log. Immutable: threads may share it. */
public final class RunSimulator {
  /** Relative tolerance that keeps the error well under a millibar [-]. */
  public static final double USUAL_TOLERANCE = 1e-6;

  private static final int USUAL_MOST_STEPS = 100_000;

  private final double tolerance;
  private final int mostSteps;

  public RunSimulator() {
    this(USUAL_TOLERANCE);
  }

  /**
   * @param tolerance relative tolerance of each step [-]
   */
  public RunSimulator(double tolerance) {
    this(tolerance, USUAL_MOST_STEPS);
  }

  /**
   * @param mostSteps of the integrator in one step of a plan; a run that needs more is refused [-]
   */
  RunSimulator(double tolerance, int mostSteps) {
    this.tolerance = Require.positive(tolerance, "tolerance", "-");
    this.mostSteps = mostSteps;
  }

  /**
   * @param times since the pump stop, ascending and inside the plan; negative before the stop [s]
   * @throws holdcurve.physics.network.SimulationException if the equations can't be followed, or
   *     not within the steps allowed, or a pressure passes {@link
   *     holdcurve.physics.network.PressureLimit#MOST}
   * @throws IllegalArgumentException if the circuit has no gauge, a time lies outside the plan, or
   *     a leak names a point that isn't in the circuit
   */
  public RunRecord simulate(Condition condition, RunPlan plan, double[] times) {
    check(times, plan);
    Sampler sampler = new Sampler(times.clone(), condition.circuit().points());
    List<RunEvent> events = new Walk(condition, plan, tolerance, mostSteps, sampler).finish(plan);
    return new RunRecord(times.clone(), sampler.gauge(), sampler.pressures(), events);
  }

  private static void check(double[] times, RunPlan plan) {
    double first = -plan.pumpStop();
    for (int i = 0; i < times.length; i++) {
      Require.within(times[i], first, first + plan.duration(), "sampling time", "s");
      if (i > 0 && times[i] <= times[i - 1]) {
        throw new IllegalArgumentException(
            "sampling times must rise, but " + times[i] + " s follows " + times[i - 1] + " s");
      }
    }
  }
}
