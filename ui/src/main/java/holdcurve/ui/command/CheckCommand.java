package holdcurve.ui.command;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.RepairCheck;
import holdcurve.advice.check.RepairCheckService;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CheckWriter;
import holdcurve.file.JobReader;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether a circuit holds as it should after a repair. */
@Command(
    name = "check",
    description = {
      "Says whether the circuit now holds as it should, by its description and by its own history.",
      "Checks the tests after the last repair, or of the last date.",
      "  holdcurve check my-car.job.json"
    },
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Mixin private Rates rates;

  @Parameters(paramLabel = "JOB", description = "A job (*.job.json).")
  private Path file;

  @Option(names = "--test", paramLabel = "ID", description = "Check this hold test alone.")
  private String test;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  @Override
  public Integer call() {
    Job job = JobReader.read(file);
    Printout out = new Printout(spec.commandLine().getOut(), units.ofJob(file));
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    FaultCatalogue catalogue = plugins.catalogue();
    RepairCheck check =
        new RepairCheckService(
                rates.service(catalogue, file, job, progress).verdictOnly(), catalogue)
            .check(job, Optional.ofNullable(test), output.seed, progress);
    progress.clear();
    CheckText.print(check, job, out);
    out.flush();
    output.write(() -> CheckWriter.json(check));
    return check.verdict().kind() == CheckVerdict.Kind.CANNOT_SAY ? HoldcurveCommand.NO_ANSWER : 0;
  }
}
