package holdcurve.ui.command;

import holdcurve.common.message.PartName;
import holdcurve.file.JobReader;
import holdcurve.file.StatedEntry;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Notes a repair in a job. */
@Command(
    name = "repair",
    description = {
      "Notes a repair that was done.",
      "  holdcurve job repair my-car.job.json --part check-valve --note \"renewed, new seals\""
    },
    mixinStandardHelpOptions = true)
final class JobRepairCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private JobArgument job;

  @Mixin private Plugins plugins;

  @Option(
      names = "--part",
      paramLabel = "PART",
      required = true,
      description = "The part that was worked on.")
  private String part;

  @Option(
      names = "--fault",
      paramLabel = "FAULT",
      description = "The fault that was put right, as 'faults' lists it.")
  private String fault;

  @Option(
      names = "--after",
      paramLabel = "NAME",
      description = "The last hold test before it (default: the last one there, or by date).")
  private String after;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "When, as 2026-04-11 (default: today).")
  private String date;

  @Option(names = "--note", paramLabel = "TEXT", description = "What was done.")
  private String note;

  @Override
  public Integer call() {
    return job.locked(this::add);
  }

  private int add() {
    Job before = JobReader.readUnfinished(job.file());
    if (fault != null) {
      FaultChoice.fault(plugins.catalogue(), "--fault", fault);
    }
    String test = after == null ? undatedLast(before) : after;
    StatedEntry repair =
        new StatedEntry()
            .put("date", "--date", date == null ? LocalDate.now().toString() : date)
            .put("part", "--part", JobArgument.id(before.circuit(), part))
            .put("fault", "--fault", fault)
            .put("after_test", "--after", test)
            .put("note", "--note", note);
    job.edited().addRepair(repair);
    Printout out = new Printout(spec.commandLine().getOut(), job.unit());
    String when = test == null ? "" : ", after the hold test '" + test + "'";
    Wrapped.print(out, "", "Noted: repair of the " + PartName.of(part) + when + ".");
    out.println("Next: hold again, and add that log:");
    out.println("  holdcurve job test " + job.file() + " LOG.csv");
    out.println("  holdcurve check " + job.file());
    return 0;
  }

  /** A test without a day can't say by itself that it came before the repair. */
  private static String undatedLast(Job job) {
    if (job.tests().isEmpty()) {
      return null;
    }
    HoldTest last = job.tests().get(job.tests().size() - 1);
    return last.day().isEmpty() ? last.id() : null;
  }
}
