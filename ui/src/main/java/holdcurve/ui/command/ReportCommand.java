package holdcurve.ui.command;

import holdcurve.advice.check.RepairCheck;
import holdcurve.advice.check.RepairCheckService;
import holdcurve.bench.flowsheet.BenchAssessment;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.FlowPoint;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.BenchSheetReader;
import holdcurve.file.CheckWriter;
import holdcurve.file.JobReader;
import holdcurve.record.job.Job;
import holdcurve.ui.report.JobReport;
import holdcurve.ui.report.ReportFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the report of a job. */
@Command(
    name = "report",
    description = {
      "Writes the report of a job as one HTML page and as PDF, to print and to sign.",
      "  holdcurve report my-car.job.json --out reports"
    },
    mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Mixin private Rates rates;

  @Parameters(paramLabel = "JOB", description = "A job (*.job.json).")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where to write it (default: beside the job).")
  private Path folder;

  @Option(
      names = "--bench-sheet",
      paramLabel = "SHEET",
      description = "Add this bench sheet as a drawn page.")
  private Path sheet;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  @Override
  public Integer call() {
    Job job = JobReader.read(file);
    ReportFiles files = ReportFiles.beside(file, Optional.ofNullable(folder));
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    FaultCatalogue catalogue = plugins.catalogue();
    RepairCheck check =
        new RepairCheckService(rates.service(catalogue, file, job, progress), catalogue)
            .check(job, Optional.empty(), output.seed, progress);
    progress.clear();
    files.write(new JobReport(job, check, LocalDate.now(), benchSheet(job), units.ofJob(file)));
    PrintWriter out = spec.commandLine().getOut();
    out.println("Written to " + files.html() + " and " + files.pdf() + ".");
    out.flush();
    output.write(() -> CheckWriter.json(check));
    return 0;
  }

  private Optional<BenchReport> benchSheet(Job job) {
    if (sheet == null) {
      return Optional.empty();
    }
    BenchLimits limits = BenchLimits.shipped();
    BenchSheet read = BenchSheetReader.read(sheet, limits);
    return Optional.of(
        BenchAssessment.judge(read, FlowPoint.of(job.circuit(), read), limits, LocalDate.now()));
  }
}
