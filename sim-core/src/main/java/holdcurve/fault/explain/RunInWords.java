package holdcurve.fault.explain;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.Operation;
import holdcurve.physics.run.RunPlan;
import holdcurve.physics.run.RunSimulator;
import holdcurve.physics.run.RunStep;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.DoubleStream;

/** What the gauge shows while the pump runs, with a fault and without. */
final class RunInWords {
  static final String HOW =
      "To log it: film needle and stopwatch from just before the pump is switched on. Readings"
          + " before the pump stop have negative times; events such as 'injectors open' and"
          + " 'injectors 5 %' stand in a column beside them.";
  private static final double PRIME = 10;
  private static final double OPEN = 8;
  private static final double FIRED = 3;
  private static final double SHARE = 0.05;

  private RunInWords() {}

  /** One line for each moment. */
  static List<String> of(Condition sound, Condition faulty) {
    double[] usual = gauge(sound);
    double[] now = gauge(faulty);
    List<String> lines = new ArrayList<>();
    lines.add(line("1 s after the pump is switched on", now[0], usual[0]));
    lines.add(line("after " + Math.round(PRIME) + " s", now[1], usual[1]));
    lines.add(line("with all injectors held open as well", now[2], usual[2]));
    lines.add(
        line(
            String.format(
                Locale.ROOT,
                "%.0f s after the pump is switched off, the injectors fired %.0f %% of the time",
                FIRED,
                100 * SHARE),
            now[3],
            usual[3]));
    return lines;
  }

  private static double[] gauge(Condition condition) {
    double[] open = gauge(condition, RunStep.engine(OPEN, 1, 0), 1, PRIME, PRIME + OPEN);
    RunStep fired =
        new RunStep(
            "injectors fired",
            FIRED,
            before -> before.withPump(false).withEngine(SHARE, 0),
            Map.of());
    double[] after = gauge(condition, fired, PRIME + FIRED);
    return new double[] {open[0], open[1], open[2], after[0]};
  }

  /**
   * @param then what follows the build-up
   * @param at moments since the pump was switched on [s]
   */
  private static double[] gauge(Condition condition, RunStep then, double... at) {
    List<RunStep> steps = List.of(RunStep.prime(PRIME), then, RunStep.stop(1));
    RunPlan plan = new RunPlan(Operation.holding(), 0, steps);
    double on = -plan.pumpStop();
    double[] times =
        DoubleStream.concat(DoubleStream.of(0), DoubleStream.of(at)).map(t -> on + t).toArray();
    double[] gauge = new RunSimulator().simulate(condition, plan, times).gauge();
    return Arrays.copyOfRange(gauge, 1, gauge.length);
  }

  private static String line(String when, double now, double usual) {
    return String.format(
        Locale.ROOT,
        "%s: %.2f bar instead of %.2f.",
        when,
        Unit.BAR.fromSi(now),
        Unit.BAR.fromSi(usual));
  }
}
