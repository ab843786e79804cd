package holdcurve.ui.command;

import holdcurve.common.input.Cancellation;
import holdcurve.common.message.Message;
import holdcurve.file.CircuitReader;
import holdcurve.file.ResultFile;
import holdcurve.file.SimulationWriter;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.EyeReadings;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.GaugeLogWriter;
import holdcurve.record.log.Reading;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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
  /** Stands above every simulated log, so that none passes for readings. */
  private static final String MARK = "# " + SimulationWriter.FORMAT + ": simulated, not read\n";

  /** More than any circuit of this sort is made for, and than its pump gives: assumed [Pa]. */
  private static final double HIGH = 6e5;

  /** A pressure that only warns is told in tenths of a bar [Pa]. */
  private static final double TENTH = 1e4;

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

  @Mixin private HoldOptions hold;

  @Option(
      names = "--read-by-eye",
      description =
          "Round as a person reads a class 1.6 gauge to 4 bar, to 0.02 bar, with its error.")
  private boolean byEye;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  @Option(names = "--log", paramLabel = "FILE", description = "Write the log to this file instead.")
  private Path logFile;

  @Override
  public Integer call() {
    Circuit circuit = CircuitReader.read(circuitFile);
    hold.check(circuit);
    Condition condition = FaultChoice.apply(circuit, plugins.catalogue(), faults);
    HoldOptions.Curve curve = hold.simulate(circuit, condition);
    GaugeSpec gauge = GaugeSpec.usual();
    double[] shown = byEye ? EyeReadings.of(curve.needle(), gauge, output.seed) : curve.needle();
    warn(circuit, shown, gauge, new Printout(spec.commandLine().getErr(), units.unit()));
    GaugeLog readings = log(curve.times(), shown);
    String log = MARK + GaugeLogWriter.write(readings, units.unit());
    Cancellation.check();
    PrintWriter out = spec.commandLine().getOut();
    if (logFile == null) {
      out.print(log);
    } else {
      ResultFile.write(logFile, log);
      out.println("Written to " + logFile + ".");
    }
    out.flush();
    output.write(() -> SimulationWriter.json(circuit.title(), faults, hold.clamped, readings));
    return 0;
  }

  /** What a person should know who takes the curve for an ordinary one. */
  private void warn(Circuit circuit, double[] shown, GaugeSpec gauge, Printout err) {
    double set = circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    double reach = Pump.reach(circuit);
    if (reach < set) {
      err.printf(
          Locale.ROOT,
          "Note: the pump holds no more than %s behind its check valve, less than the %s"
              + " of the regulator; look at stall_bar, relief_bar and crack_bar.%n",
          err.pressure(Math.max(0, reach)),
          err.pressure(set));
    }
    double most = Arrays.stream(shown).max().orElse(0);
    if (most > HIGH && most > shown[0]) {
      err.printf(
          Locale.ROOT,
          "Note: the pressure climbs to %s, since fuel that is shut in warms. Hoses, joints"
              + " and gauge may not stand that: on a car, take a clamp off in time.%n",
          err.said(Message.of("%s", Message.round(TENTH * Math.rint(most / TENTH)))));
    }
    long atStop = Arrays.stream(shown).filter(p -> byEye && p >= gauge.range()).count();
    if (atStop > 0) {
      err.printf(
          Locale.ROOT,
          "Note: the needle stands at its stop, %s, in %d of %d readings.%n",
          err.said(Message.of("%s", Message.round(gauge.range()))),
          atStop,
          shown.length);
    }
    err.flush();
  }

  private static GaugeLog log(double[] times, double[] shown) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      readings.add(Reading.of(times[i], shown[i]));
    }
    return new GaugeLog("simulated", readings, 0);
  }
}
