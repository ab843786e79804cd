package holdcurve.ui.command;

import holdcurve.advice.check.HoldTable;
import holdcurve.advice.check.RepairCheck;
import holdcurve.common.message.PartName;
import holdcurve.common.number.Interpolation;
import holdcurve.common.text.Titles;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.BeforeRepair;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Session;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The check of a repair as text for a terminal, 80 columns wide. */
final class CheckText {
  private CheckText() {}

  static void print(RepairCheck check, Job job, Printout out) {
    AnswerText.print(check.ranking().diagnosis(), out);
    out.println(Titles.shown(check.job()));
    printRecord(check, job, out);
    BeforeRepair.words(job).ifPresent(said -> out.wrapped("", said));
    out.println();
    String source = job.upkeep().passStated() ? "set for this job" : "common practice";
    check.marks().forEach(mark -> printMark(check, mark, source, out));
    List<HoldTest> tests = check.timeline().checked().tests();
    for (int i = 0; i < tests.size(); i++) {
      out.println();
      printTable(check, i, out);
    }
    printNotes(check, out);
  }

  private static void printRecord(RepairCheck check, Job job, Printout out) {
    check.timeline().earlier().forEach(session -> out.println("  before:  " + tests(session)));
    check
        .timeline()
        .repair()
        .ifPresent(repair -> Wrapped.print(out, "  repair:  ", repair(repair, job)));
    out.println("  checked: " + tests(check.timeline().checked()));
  }

  private static String tests(Session session) {
    String day = session.day().map(d -> d + "  ").orElse("");
    return day
        + session.tests().stream()
            .map(
                test ->
                    String.format(
                        Locale.ROOT, "%s (%.0f min)", test.id(), test.log().holdSpan() / 60))
            .collect(Collectors.joining(", "));
  }

  private static String repair(Repair repair, Job job) {
    String note = repair.note().isEmpty() ? "" : ": " + repair.note();
    return repair.date() + "  " + PartName.of(repair.part()) + note;
  }

  private static void printMark(RepairCheck check, PassMark mark, String source, Printout out) {
    double minutes = check.limit().time() / 60;
    String limit =
        String.format(
            Locale.ROOT,
            "Pass limit (%s): %s after %s min; %s shows ",
            source,
            out.pressure(check.limit().pressure()),
            minutes == Math.rint(minutes) ? String.valueOf((long) minutes) : minutes,
            mark.test());
    String shown = out.pressure(mark.reading());
    Wrapped.print(
        out,
        "",
        switch (mark.outcome()) {
          case PASSES -> limit + shown + ": passes.";
          case WITHIN_GAUGE_ERROR ->
              limit + shown + ": below it, by less than the gauge may be off.";
          case FAILS -> limit + shown + ": does not pass.";
          case TOO_SHORT -> limit + "nothing: it ended before.";
        });
  }

  private static void printTable(RepairCheck check, int i, Printout out) {
    HoldTable table = HoldTable.of(check, i);
    Optional<HoldTest> last = table.last();
    out.println("Pressure in " + out.unit() + ", " + table.test().id() + ":");
    out.println(
        "   min   read   should show"
            + (table.remembered().isPresent() ? "    by its own history" : "")
            + last.map(test -> "   " + (test.date().isEmpty() ? test.id() : test.date()))
                .orElse(""));
    for (double time : table.times()) {
      out.println(
          String.format(Locale.ROOT, "  %4.1f", time / 60)
              + cell(table.read(time), out)
              + band(Optional.of(table.described()), time, 16, out)
              + (table.remembered().isPresent() ? band(table.remembered(), time, 21, out) : "")
              + last.map(test -> "  " + cell(HoldTable.read(test, time), out)).orElse(""));
    }
  }

  private static String cell(double pressure, Printout out) {
    return Double.isNaN(pressure) ? "      -" : String.format("%7s", out.number(pressure));
  }

  private static String band(Optional<HoldCurve> curve, double time, int width, Printout out) {
    String text =
        curve
            .map(
                c ->
                    out.number(Interpolation.at(c.time(), c.low(), time))
                        + " to "
                        + out.number(Interpolation.at(c.time(), c.high(), time)))
            .orElse("");
    return " ".repeat(Math.max(1, width - text.length())) + text;
  }

  private static void printNotes(RepairCheck check, Printout out) {
    if (!check.notes().isEmpty()) {
      out.println();
      out.println("Assumed, and read from the files:");
      SameNotes.together(check.notes().stream().map(out::said).toList())
          .forEach(note -> Wrapped.print(out, "  - ", note));
    }
  }
}
