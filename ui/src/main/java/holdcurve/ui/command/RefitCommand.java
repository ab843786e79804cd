package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.file.JobReader;
import holdcurve.file.RefitFile;
import holdcurve.file.RefitListWriter;
import holdcurve.record.job.Job;
import holdcurve.record.refit.RefitList;
import holdcurve.record.refit.RefitStep;
import holdcurve.record.refit.RefitTick;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the refit list of a job, and ticks its steps. */
@Command(
    name = "refit",
    description = {
      "Shows the steps from parts on the bench to the first pressurisation, and ticks them.",
      "  holdcurve refit my-car.job.json",
      "  holdcurve refit my-car.job.json --tick seals-new --by AB"
    },
    mixinStandardHelpOptions = true)
final class RefitCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "A job (*.job.json).")
  private Path file;

  @Option(names = "--tick", paramLabel = "STEP", description = "This step is done.")
  private String tick;

  @Option(names = "--untick", paramLabel = "STEP", description = "This step is to be done again.")
  private String untick;

  @Option(names = "--by", paramLabel = "INITIALS", description = "Who did it.")
  private String by;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "When, as 2026-04-11 (default: today).")
  private LocalDate date;

  @Mixin private Output output;

  @Override
  public Integer call() {
    Job job = JobReader.read(file);
    RefitList list = job.upkeep().refit();
    RefitList changed = changed(list);
    if (!changed.equals(list)) {
      write(changed);
    }
    print(changed, spec.commandLine().getOut());
    output.write(() -> RefitListWriter.json(job.title(), changed));
    return 0;
  }

  private void write(RefitList changed) {
    JobArgument.locked(
        file,
        () -> {
          RefitFile.write(file, changed);
          return changed;
        });
  }

  private RefitList changed(RefitList list) {
    RefitList changed = list;
    if (untick != null) {
      changed = changed.untick(known(list, "--untick", untick));
    }
    if (tick != null) {
      if (by == null || !RefitTick.isName(by)) {
        throw InputException.at(
            "command line",
            by == null ? "--tick " + tick : "--by " + by,
            "a tick needs initials of 1 to " + RefitTick.LONGEST + " characters",
            "add --by and who did it");
      }
      LocalDate day = date == null ? LocalDate.now() : date;
      changed = changed.tick(known(list, "--tick", tick), new RefitTick(day, by));
    }
    return changed;
  }

  private static String known(RefitList list, String option, String id) {
    if (list.step(id).isEmpty()) {
      throw InputException.at(
          "command line",
          option + " " + id,
          "the list has no such step",
          "use one of " + String.join(", ", list.steps().stream().map(RefitStep::id).toList()));
    }
    return id;
  }

  private static void print(RefitList list, PrintWriter out) {
    for (RefitStep step : list.steps()) {
      out.println(
          (step.isDone() ? "[x] " : "[ ] ")
              + step.id()
              + step.tick().map(t -> "  (" + t.date() + " " + t.by() + ")").orElse(""));
      if (!step.caution().isEmpty()) {
        Wrapped.print(out, "    Caution: ", step.caution());
      }
      Wrapped.print(out, "    ", step.text());
    }
    out.println();
    out.println(
        list.next()
            .map(step -> list.done() + " of " + list.steps().size() + " done; next: " + step.id())
            .orElse("All " + list.steps().size() + " steps are done."));
    out.flush();
  }
}
