package holdcurve.ui.command;

import holdcurve.bench.droptest.DropAssessment;
import holdcurve.bench.droptest.DropFinding;
import holdcurve.bench.droptest.DropReport;
import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.droptest.TrappedFuel;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.common.input.InputException;
import holdcurve.file.DropTestReader;
import holdcurve.file.StatedEntry;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.finding.DropTestResult;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Notes what a drop test came to. */
@Command(
    name = "drop-test",
    description = {
      "Notes what a drop test came to.",
      "Only an injector that doesn't shut counts in the ranking: the rest is about delivery.",
      "  holdcurve job drop-test my-car.job.json drops.csv"
    },
    mixinStandardHelpOptions = true)
final class JobDropTestCommand implements Callable<Integer> {
  /** The same as the window's, so that both give one answer. */
  private static final long SEED = 1;

  @Spec private CommandSpec spec;

  @Mixin private FindingArgument finding;

  @Parameters(index = "1", paramLabel = "TEST", description = "A drop test.")
  private Path test;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The day of the test, as 2026-11-24 (default: not noted).")
  private LocalDate date;

  @Override
  public Integer call() {
    int exitCode = finding.add((circuit, unit) -> entry(result(circuit)));
    Wrapped.print(spec.commandLine().getOut(), "", DropTestText.COUNTS);
    spec.commandLine().getOut().flush();
    return exitCode;
  }

  private DropTestResult result(Circuit circuit) {
    DropTest read = DropTestReader.read(test);
    TrappedFuel known = TrappedFuel.in(Optional.of(circuit), read);
    DropReport report = DropAssessment.judge(read, known, BenchLimits.shipped(), SEED);
    return DropFinding.of(report, circuit, Optional.ofNullable(date))
        .orElseThrow(
            () ->
                InputException.at(
                    test.toString(),
                    "",
                    "the circuit has no set of injectors, or more than one",
                    "describe one set of injectors"));
  }

  private static StatedEntry entry(DropTestResult result) {
    return new StatedEntry()
        .put("kind", "", "drop-test")
        .put("part", "", result.part())
        .put("low", "", named(result.low()))
        .put("high", "", named(result.high()))
        .put("stays_open", "", named(result.staysOpen()))
        .put("watched", "", result.watched())
        .put("date", "--date", result.date().map(LocalDate::toString).orElse(null));
  }

  private static List<String> named(List<String> names) {
    return names.isEmpty() ? null : names;
  }
}
