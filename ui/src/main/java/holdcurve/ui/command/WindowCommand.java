package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.message.PressureUnit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.file.LogUnits;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.Job;
import holdcurve.ui.scenario.Scenarios;
import holdcurve.ui.window.WindowLauncher;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the window; where there can be none, says why and prints the ranking instead. */
@Command(
    name = "window",
    description = "Opens the window on a job, or where jobs are begun.",
    mixinStandardHelpOptions = true)
final class WindowCommand implements Callable<Integer> {
  private static final long SEED = 1;

  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "A job (*.job.json), or a circuit (*.circuit.json) to begin a job on.")
  private Path file;

  @Option(
      names = "--snapshot",
      paramLabel = "PNG",
      description =
          "Write a picture of the window to this file once the job is ranked, and close it.")
  private Path picture;

  @Override
  public Integer call() {
    Path job = file == null ? Scenarios.first().orElse(null) : file;
    requirePicture(job);
    boolean startPage = file == null && picture == null && Scenarios.installed();
    Optional<String> reason =
        WindowLauncher.open(startPage ? null : job, plugins.folder(), picture);
    if (reason.isPresent() && picture != null) {
      throw new NoAnswerException(reason.get());
    }
    if (reason.isPresent()) {
      printInstead(reason.get(), job, plugins.catalogue());
    }
    return 0;
  }

  private void requirePicture(Path job) {
    if (picture == null) {
      return;
    }
    if (!picture.toString().toLowerCase(Locale.ROOT).endsWith(".png")) {
      throw InputException.at(
          "command line", "--snapshot " + picture, "this is no picture", "end its name in .png");
    }
    if (job == null) {
      throw InputException.at(
          "command line", "--snapshot " + picture, "no job is named", "name the job to show");
    }
  }

  private void printInstead(String reason, Path file, FaultCatalogue catalogue) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(reason);
    if (file != null) {
      out.println();
      Job job = JobReader.read(file);
      ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
      RankingText.print(
          new RankingService(catalogue).rank(job, SEED, progress),
          job,
          new Printout(out, LogUnits.ofJob(file).orElse(PressureUnit.BAR)));
    }
    out.flush();
  }
}
