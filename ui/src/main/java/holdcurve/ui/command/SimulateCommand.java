package holdcurve.ui.command;

import holdcurve.check.InputException;
import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.Unit;
import holdcurve.file.CircuitReader;
import holdcurve.file.SafeFile;
import holdcurve.hold.HoldSetup;
import holdcurve.hold.HoldSimulator;
import holdcurve.job.EyeReadings;
import holdcurve.job.GaugeSpec;
import holdcurve.log.GaugeLog;
import holdcurve.log.GaugeLogWriter;
import holdcurve.log.Reading;
import holdcurve.model.NetworkAssembler.Detail;
import holdcurve.model.Operation;
import holdcurve.part.Hose;
import holdcurve.part.Pump;
import holdcurve.part.Regulator;
import holdcurve.run.HoldRun;
import holdcurve.run.RunRecord;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Simulates a hold, with faults if wished, and prints what the gauge would show. */
@Command(
    name = "simulate",
    description = {
      "Simulates a hold and prints it as a gauge log.",
      "  holdcurve simulate my-car.circuit.json --fault check-valve-seat=0.3 --clamp feed-hose"
    },
    mixinStandardHelpOptions = true)
final class SimulateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Parameters(paramLabel = "CIRCUIT", description = "The circuit (*.circuit.json).")
  private Path circuitFile;

  @Option(
      names = "--fault",
      paramLabel = "FAULT[=SIZE]",
      description =
          "A fault by its id, as 'faults' lists it, with its size in the unit given there; again"
              + " for a second one.")
  private List<String> faults = new ArrayList<>();

  @Option(
      names = "--clamp",
      paramLabel = "HOSE",
      description = "Clamp this hose; again for another.")
  private Set<String> clamped = new LinkedHashSet<>();

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
          "Begin at rest and run the pump for this many seconds before it stops; readings before"
              + " the stop have negative times.")
  private Double buildUp;

  @Option(
      names = "--read-by-eye",
      description =
          "Round as a person reads a class 1.6 gauge to 4 bar, to 0.02 bar, with its error.")
  private boolean byEye;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the reading errors.")
  private long seed;

  @Option(names = "--log", paramLabel = "FILE", description = "Write the log to this file instead.")
  private Path logFile;

  @Override
  public Integer call() {
    Circuit circuit = CircuitReader.read(circuitFile);
    checkTimes();
    checkClamps(circuit);
    Condition condition = FaultChoice.apply(circuit, plugins.catalogue(), faults);
    Curve curve = buildUp == null ? hold(circuit, condition) : wholeLog(condition);
    GaugeSpec gauge = GaugeSpec.usual();
    double[] shown = byEye ? EyeReadings.of(curve.needle(), gauge, seed) : curve.needle();
    warn(circuit, shown, gauge);
    String log = GaugeLogWriter.write(log(curve.times(), shown));
    PrintWriter out = spec.commandLine().getOut();
    if (logFile == null) {
      out.print(log);
    } else {
      SafeFile.write(logFile, log);
      out.println("Written to " + logFile + ".");
    }
    out.flush();
    return 0;
  }

  /** Needle positions [Pa gauge] at times since the pump stop [s]. */
  private record Curve(double[] times, double[] needle) {}

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

  /** What a person should know who takes the curve for an ordinary one. */
  private void warn(Circuit circuit, double[] shown, GaugeSpec gauge) {
    PrintWriter err = spec.commandLine().getErr();
    double set = circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    double reach = Pump.reach(circuit);
    if (reach < set) {
      err.printf(
          Locale.ROOT,
          "Note: the pump holds no more than %.2f bar behind its check valve, less than the %.2f"
              + " bar of the regulator; look at stall_bar, relief_bar and crack_bar.%n",
          Math.max(0, reach) / 1e5,
          set / 1e5);
    }
    long atStop = Arrays.stream(shown).filter(p -> byEye && p >= gauge.range()).count();
    if (atStop > 0) {
      err.printf(
          Locale.ROOT,
          "Note: the needle stands at its stop, %.0f bar, in %d of %d readings.%n",
          gauge.range() / 1e5,
          atStop,
          shown.length);
    }
    err.flush();
  }

  /** What the pump's flow lifts the regulator above its set pressure: assumed [Pa]. */
  private static final double OVERPRESSURE = Unit.BAR.toSi(0.05);

  private double[] times() {
    int last = (int) Math.floor(minutes * 60 / step + 1e-9);
    double[] times = new double[last + 1];
    for (int i = 0; i <= last; i++) {
      times[i] = i * step;
    }
    return times;
  }

  private static GaugeLog log(double[] times, double[] shown) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      readings.add(Reading.of(times[i], shown[i]));
    }
    return new GaugeLog("simulated", readings, 0);
  }
}
