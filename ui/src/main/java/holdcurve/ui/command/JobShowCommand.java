package holdcurve.ui.command;

import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
import holdcurve.common.text.Titles;
import holdcurve.file.JobReader;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Hose;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import holdcurve.record.log.Reading;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says what stands in a job. */
@Command(
    name = "show",
    description = {
      "Says what stands in a job, and the names of its parts.",
      "  holdcurve job show my-car.job.json"
    },
    mixinStandardHelpOptions = true)
final class JobShowCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private JobArgument file;

  @Override
  public Integer call() {
    Job job = JobReader.readUnfinished(file.file());
    Printout out = new Printout(spec.commandLine().getOut(), file.unit());
    out.println(Titles.shown(job.title()));
    list("Hold tests", job.tests().stream().map(JobShowCommand::test).toList(), out);
    list(
        "Seen and counted",
        job.findings().stream().map(f -> Message.plain(f.inDatedWords(file.unit()))).toList(),
        out);
    list("Repairs", job.upkeep().repairs().stream().map(JobShowCommand::repair).toList(), out);
    out.println();
    Wrapped.print(
        out,
        "Parts: ",
        job.circuit().parts().stream().map(Part::id).collect(Collectors.joining(", ")));
    Wrapped.print(out, "Hoses to clamp: ", String.join(", ", Hose.clampable(job.circuit())));
    return 0;
  }

  private static void list(String heading, List<Message> lines, Printout out) {
    out.println();
    out.println(heading + ":" + (lines.isEmpty() ? " none yet" : ""));
    out.wrapped("  - ", lines);
  }

  private static Message test(HoldTest test) {
    String day = test.date().isEmpty() ? "" : test.date() + ", ";
    String clamps =
        test.clamped().isEmpty()
            ? "no clamp"
            : test.clamped().stream().map(PartName::of).collect(Collectors.joining(" and "))
                + " clamped";
    List<Reading> hold = test.log().hold();
    return hold.isEmpty()
        ? Message.of("%s%s: %s, no readings yet", day, test.id(), clamps)
        : Message.of(
            "%s%s: %s, %s to %s in %.0f min",
            day,
            test.id(),
            clamps,
            Message.number(hold.get(0).pressure()),
            Message.pressure(hold.get(hold.size() - 1).pressure()),
            test.log().holdSpan() / 60);
  }

  private static Message repair(Repair repair) {
    String note = repair.note().isEmpty() ? "" : ": " + repair.note();
    String after = repair.afterTest().isEmpty() ? "" : ", after '" + repair.afterTest() + "'";
    return Message.plain(repair.date() + ", " + PartName.of(repair.part()) + after + note);
  }
}
