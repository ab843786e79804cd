package holdcurve.ui.command;

import holdcurve.common.message.PressureUnit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CaseShelf;
import holdcurve.file.JobReader;
import holdcurve.file.JobWriter;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.Job;
import holdcurve.ui.problem.Notes;
import holdcurve.ui.problem.ProblemFile;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what is needed to look into a problem, and says what that is. */
@Command(
    name = "report-problem",
    description = {
      "Ranks a job again and writes a zip with the job, its files, what happened, and the"
          + " version. Nothing is sent.",
      "  holdcurve report-problem my-car.job.json"
    },
    mixinStandardHelpOptions = true)
final class ReportProblemCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Parameters(paramLabel = "JOB", description = "The job (*.job.json) that went wrong.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "ZIP",
      description = "Where to write it (default: beside the job).")
  private Path zip;

  @Option(
      names = "--without-ranking",
      description = "Don't rank again, for a job whose ranking never ends.")
  private boolean withoutRanking;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the ranking that went wrong (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    String seen = "";
    ProblemFile problem;
    try (Notes notes = Notes.open()) {
      // the job is looked for before minutes are spent on it
      ProblemFile.of(file, "");
      seen = withoutRanking ? "It was not ranked again." : rankedAgain(notes);
      notes.add(seen);
      problem = ProblemFile.of(file, notes.text());
    }
    Path target = zip == null ? beside() : zip;
    problem.write(target);
    say(seen, problem, target, out);
    return 0;
  }

  /** What came of it, in a sentence. */
  private String rankedAgain(Notes notes) {
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    try {
      Job job = CurrentTests.of(JobReader.read(file));
      FaultCatalogue catalogue = plugins.catalogue();
      StringWriter ranked = new StringWriter();
      RankingText.print(
          new RankingService(catalogue, CaseShelf.usual().priors(catalogue))
              .rank(job, seed, progress),
          job,
          new Printout(new PrintWriter(ranked), PressureUnit.BAR));
      notes.add(ranked.toString());
      return "Ranking it again worked.";
    } catch (CancellationException e) {
      throw e;
    } catch (RuntimeException e) {
      notes.add(e);
      return "Ranking it again failed: " + Failures.sentence(e);
    } finally {
      progress.clear();
    }
  }

  private Path beside() {
    String name = file.getFileName().toString();
    String stem =
        name.endsWith(JobWriter.ENDING)
            ? name.substring(0, name.length() - JobWriter.ENDING.length())
            : name;
    return file.resolveSibling(stem + ProblemFile.ENDING);
  }

  private static void say(String seen, ProblemFile problem, Path zip, PrintWriter out) {
    out.println("Written to " + zip + ". Nothing was sent. In it:");
    int width = problem.entries().stream().mapToInt(one -> one.name().length()).max().orElse(0);
    problem
        .entries()
        .forEach(
            one -> out.printf("  %-" + width + "s %8s  %s%n", one.name(), one.size(), one.what()));
    problem.missing().forEach(one -> out.println("  not in it: " + one));
    Wrapped.print(out, "", seen);
    out.println("Look it over, then send it with a sentence on what went wrong.");
    out.flush();
  }
}
