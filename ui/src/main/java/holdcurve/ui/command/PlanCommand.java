package holdcurve.ui.command;

import holdcurve.advice.plan.Plan;
import holdcurve.advice.plan.Planner;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.file.PlanWriter;
import holdcurve.inference.posterior.Posterior;
import holdcurve.record.job.BeforeRepair;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says which test to do next. */
@Command(
    name = "plan",
    description = "Says which test tells most for the time it takes, and how it is done.",
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Mixin private Rates rates;

  @Parameters(paramLabel = "JOB", description = "A job (*.job.json).")
  private Path file;

  @Option(names = "--all", description = "Show steps and outcomes of every test, not of the best.")
  private boolean all;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  @Override
  public Integer call() {
    FaultCatalogue catalogue = plugins.catalogue();
    Job whole = JobReader.read(file);
    Job job = CurrentTests.of(whole);
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    Posterior posterior =
        rates
            .service(catalogue, file, job, progress)
            .verdictOnly()
            .believe(job, output.seed, Planner.DRAWS, progress);
    Undecided.stopIfUnexplained(posterior.ranking());
    Plan plan = Planner.plan(posterior, output.seed, progress);
    progress.clear();
    Printout out = new Printout(spec.commandLine().getOut(), units.ofJob(file));
    new PlanText(out).print(plan, posterior.ranking(), BeforeRepair.words(whole), all);
    out.flush();
    output.write(() -> PlanWriter.json(plan));
    return 0;
  }
}
