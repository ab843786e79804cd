package holdcurve.advice.whatif;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.network.Operation;
import holdcurve.physics.run.RunPlan;
import holdcurve.physics.run.RunRecord;
import holdcurve.physics.run.RunSimulator;
import holdcurve.physics.run.RunStep;
import java.util.List;

/**
 * Priming from rest, then the engine at idle, then at full load, each long enough to settle.
 *
 * @param buildUp from rest to nine tenths of the pressure that priming reaches [s]
 * @param primed pressure at the gauge at the end of priming [Pa gauge]
 * @param idle likewise with the engine idling
 * @param fullLoad likewise at full load
 */
record EngineRun(double buildUp, double primed, double idle, double fullLoad) {
  private static final double PRIMING = 20;
  private static final double RUNNING = 5;
  private static final double SAMPLE = 0.1;

  /** Share of the time that injectors are open at idle, and the manifold then: common practice. */
  private static final double IDLE_DUTY = 0.05;

  private static final double IDLE_MANIFOLD = -0.6e5;
  private static final double FULL_DUTY = 0.8;

  /** A millibar is far below what a needle shows [-]. */
  private static final double TOLERANCE = 1e-4;

  private static final double REACHED = 0.9;

  static EngineRun of(Condition condition, double fuelTemperature) {
    RunPlan plan =
        new RunPlan(
            Operation.holding().withFuelTemperature(fuelTemperature),
            0,
            List.of(
                RunStep.prime(PRIMING),
                RunStep.engine(RUNNING, IDLE_DUTY, IDLE_MANIFOLD),
                RunStep.engine(RUNNING, FULL_DUTY, 0)));
    RunRecord run = new RunSimulator(TOLERANCE).simulate(condition, plan, times());
    double[] gauge = run.gauge();
    int primed = gauge.length - 3;
    return new EngineRun(
        buildUp(run.times(), gauge, primed), gauge[primed], gauge[primed + 1], gauge[primed + 2]);
  }

  /** Fine while priming, then the ends of the three steps. */
  private static double[] times() {
    int count = (int) Math.round(PRIMING / SAMPLE);
    double[] times = new double[count + 3];
    for (int i = 0; i < count; i++) {
      times[i] = i * SAMPLE;
    }
    times[count] = PRIMING - 1e-3;
    times[count + 1] = PRIMING + RUNNING - 1e-3;
    times[count + 2] = PRIMING + 2 * RUNNING - 1e-3;
    return times;
  }

  private static double buildUp(double[] times, double[] gauge, int last) {
    double aim = REACHED * gauge[last];
    for (int i = 1; i <= last; i++) {
      if (gauge[i] >= aim) {
        double share = (aim - gauge[i - 1]) / (gauge[i] - gauge[i - 1]);
        return times[i - 1] + share * (times[i] - times[i - 1]);
      }
    }
    return times[last];
  }
}
