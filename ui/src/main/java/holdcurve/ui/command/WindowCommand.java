package holdcurve.ui.command;

import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.infer.RankingService;
import holdcurve.job.Job;
import holdcurve.ui.window.WindowLauncher;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the window; where there can be none, says why and prints the ranking instead. */
@Command(
    name = "window",
    description = "Opens the window on a job, or on a shipped scenario.",
    mixinStandardHelpOptions = true)
final class WindowCommand implements Callable<Integer> {
  private static final long SEED = 1;

  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Parameters(arity = "0..1", paramLabel = "JOB", description = "A job (*.job.json).")
  private Path file;

  @Override
  public Integer call() {
    Path job = file == null ? Scenarios.first().orElse(null) : file;
    Optional<String> reason = WindowLauncher.open(job, plugins.folder());
    if (reason.isPresent()) {
      printInstead(reason.get(), job, plugins.catalogue());
    }
    return 0;
  }

  private void printInstead(String reason, Path file, FaultCatalogue catalogue) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(reason);
    if (file != null) {
      out.println();
      Job job = JobReader.read(file);
      ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
      RankingText.print(new RankingService(catalogue).rank(job, SEED, progress), job, out);
    }
    out.flush();
  }
}
