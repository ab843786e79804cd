package holdcurve.ui.command;

import holdcurve.circuit.Unit;
import holdcurve.droptest.DropReport;
import holdcurve.droptest.InjectorDrop;
import holdcurve.infer.Interval;
import holdcurve.injector.Standing;
import holdcurve.text.Rounded;
import holdcurve.text.Titles;
import java.io.PrintWriter;
import java.util.Locale;

/** A drop report as text for a terminal. */
final class DropTestText {
  private static final String ROW = "  %-8s %6s %6s %20s %17s  %s";

  private DropTestText() {}

  static void print(DropReport report, PrintWriter out) {
    out.println(Titles.shown(report.test().title()));
    out.println();
    Cautions.FIRING.print(out);
    report.verdict().forEach(sentence -> Wrapped.print(out, "", sentence.toString()));
    out.println();
    row(out, "Injector", "fired", "drop", "passes, against the", "flow, mL/min", "");
    row(out, "", "times", "bar", "middle one (90 %)", flowHead(report), "");
    for (InjectorDrop injector : report.injectors()) {
      row(
          out,
          injector.id(),
          injector.firings(),
          String.format(Locale.ROOT, "%.2f", injector.meanDrop() / 1e5),
          range(injector.departure()),
          injector.flow().map(DropTestText::flow).orElse("–"),
          standing(injector));
    }
    out.println();
    out.println("What was understood and assumed:");
    report.notes().forEach(note -> Wrapped.print(out, "  - ", note.toString()));
  }

  private static String flowHead(DropReport report) {
    return String.format(Locale.ROOT, "at %.1f bar", report.pressure() / 1e5);
  }

  private static void row(PrintWriter out, Object... cells) {
    out.println(String.format(Locale.ROOT, ROW, cells).stripTrailing());
  }

  private static String standing(InjectorDrop injector) {
    if (!injector.sure()) {
      return "not settled";
    }
    if (injector.standing() == Standing.IN_LINE) {
      return "in line";
    }
    return injector.departure().middle() < 0 ? "low" : "high";
  }

  private static String range(Interval d) {
    return String.format(
        Locale.ROOT,
        "%+.0f %% (%+.0f to %+.0f)",
        Rounded.whole(100 * d.middle()),
        Rounded.whole(100 * d.low()),
        Rounded.whole(100 * d.high()));
  }

  private static String flow(Interval flow) {
    return String.format(
        Locale.ROOT,
        "%.0f (%.0f to %.0f)",
        Unit.MILLILITRE_PER_MINUTE.fromSi(flow.middle()),
        Unit.MILLILITRE_PER_MINUTE.fromSi(flow.low()),
        Unit.MILLILITRE_PER_MINUTE.fromSi(flow.high()));
  }
}
