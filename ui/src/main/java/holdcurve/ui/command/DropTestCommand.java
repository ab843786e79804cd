package holdcurve.ui.command;

import holdcurve.bench.droptest.DropAssessment;
import holdcurve.bench.droptest.DropReport;
import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.droptest.TrappedFuel;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.file.CircuitReader;
import holdcurve.file.DropReportWriter;
import holdcurve.file.DropTestReader;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges a drop-per-pulse test. */
@Command(
    name = "drop-test",
    description = {
      "Compares injectors by the drop of the gauge when each is fired.",
      "Pump off, one injector fired for a fixed time, the drop of the gauge noted, each in turn and"
          + " again. Says which is low or high, and how many repeats settle it.",
      "  holdcurve drop-test drops.csv --circuit my-car.circuit.json"
    },
    mixinStandardHelpOptions = true)
final class DropTestCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "A drop test (*.csv or *.drops.json).")
  private Path file;

  @Option(
      names = "--circuit",
      paramLabel = "CIRCUIT",
      description = "The circuit that was tested; with it flows are given too.")
  private Path circuit;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  @Override
  public Integer call() {
    Printout out = new Printout(spec.commandLine().getOut(), units.unit());
    DropTest test = DropTestReader.read(file);
    DropReport report = DropAssessment.judge(test, fuel(test), BenchLimits.shipped(), output.seed);
    DropTestText.print(report, out);
    out.flush();
    output.write(() -> DropReportWriter.json(report));
    return 0;
  }

  private TrappedFuel fuel(DropTest test) {
    return TrappedFuel.in(Optional.ofNullable(circuit).map(CircuitReader::read), test);
  }
}
