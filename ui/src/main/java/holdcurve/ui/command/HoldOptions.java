package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.run.HoldRun;
import holdcurve.physics.run.RunRecord;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Option;

/** Options that say how a hold is simulated. */
final class HoldOptions {
  /** What the pump's flow lifts the regulator above its set pressure: assumed [Pa]. */
  private static final double OVERPRESSURE = Unit.BAR.toSi(0.05);

  @Option(
      names = "--clamp",
      paramLabel = "HOSE",
      description = "Clamp this hose; again for another.")
  Set<String> clamped = new LinkedHashSet<>();

  @Option(
      names = "--clamp-time",
      paramLabel = "S",
      defaultValue = "5",
      description =
          "When the clamps go on, in seconds after the pump stop (default: ${DEFAULT-VALUE}).")
  private double clampTime;

  @Option(
      names = "--hold",
      paramLabel = "MIN",
      defaultValue = "10",
      description = "How long to watch, in minutes (default: ${DEFAULT-VALUE}).")
  private double minutes;

  @Option(
      names = "--every",
      paramLabel = "S",
      defaultValue = "30",
      description = "Seconds between readings (default: ${DEFAULT-VALUE}).")
  private double step;

  @Option(
      names = "--warmth",
      paramLabel = "K",
      defaultValue = "0",
      description =
          "Fuel temperature over its surroundings at the pump stop, in kelvin (default:"
              + " ${DEFAULT-VALUE}).")
  private double warmth;

  @Option(
      names = "--build-up",
      paramLabel = "S",
      description =
          "Begin at rest and run the pump for this many seconds before it stops. Readings before"
              + " the stop have negative times.")
  private Double buildUp;

  /** Needle positions [Pa gauge] at times since the pump stop [s]. */
  record Curve(double[] times, double[] needle) {}

  /** What the needle shows. */
  Curve simulate(Circuit circuit, Condition condition) {
    return buildUp == null ? hold(circuit, condition) : wholeLog(condition);
  }

  /**
   * @throws InputException if an option can't be used with this circuit
   */
  void check(Circuit circuit) {
    checkTimes();
    checkClamps(circuit);
  }

  private Curve hold(Circuit circuit, Condition condition) {
    double[] times = times();
    return new Curve(
        times, new HoldSimulator(Detail.FULL, 1e-6).readings(condition, setup(circuit), times));
  }

  private Curve wholeLog(Condition condition) {
    RunRecord run = HoldRun.simulate(condition, buildUp, minutes * 60, clamped, clampTime, step);
    return new Curve(run.times(), run.gauge());
  }

  private void checkTimes() {
    if (buildUp != null && !(buildUp > 0 && buildUp <= 3600)) {
      throw InputException.at(
          "command line",
          "--build-up " + buildUp,
          "the pump can't run that long",
          "give 1 to 3600 seconds");
    }
    if (!(minutes > 0 && minutes <= 600 && step > 0 && minutes * 60 / step <= 100_000)) {
      throw InputException.at(
          "command line",
          "--hold " + minutes + " --every " + step,
          "that is no number of readings",
          "watch up to 600 minutes, and take at most 100 000 readings");
    }
    if (!(clampTime >= 0 && Math.abs(warmth) <= 30)) {
      throw InputException.at(
          "command line",
          "--clamp-time " + clampTime + " --warmth " + warmth,
          "a value is out of range",
          "give a clamp time from 0 s and a warmth from -30 to 30 K");
    }
  }

  private void checkClamps(Circuit circuit) {
    List<String> clampable = Hose.clampable(circuit);
    if (!clamped.isEmpty() && clampTime >= minutes * 60) {
      throw InputException.at(
          "command line",
          "--clamp-time " + clampTime,
          "the clamps would go on after the end of the hold",
          "clamp earlier, or watch longer with --hold");
    }
    for (String hose : clamped) {
      if (!clampable.contains(hose)) {
        throw InputException.at(
            "command line",
            "--clamp " + hose,
            "no such hose can be clamped",
            "one can clamp " + String.join(", ", clampable));
      }
    }
  }

  private HoldSetup setup(Circuit circuit) {
    double wanted = circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET) + OVERPRESSURE;
    double start = Math.max(0, Math.min(wanted, Pump.reach(circuit)));
    return new HoldSetup(start, 20, warmth, Operation.holding(), clamped, clampTime, 0, 0);
  }

  private double[] times() {
    int last = (int) Math.floor(minutes * 60 / step + 1e-9);
    double[] times = new double[last + 1];
    for (int i = 0; i <= last; i++) {
      times[i] = i * step;
    }
    return times;
  }
}
