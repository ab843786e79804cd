package holdcurve.ui.command;

import holdcurve.bench.droptest.DropReport;
import holdcurve.bench.droptest.InjectorDrop;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.number.Interval;
import holdcurve.common.text.Rounded;
import holdcurve.common.text.Titles;
import holdcurve.physics.circuit.Unit;
import java.util.Locale;

/** A drop report as text for a terminal. */
final class DropTestText {
  private static final String ROW = "  %-8s %6s %6s %20s %17s  %s";

  /** What of a drop test moves a ranking. */
  static final String COUNTS =
      "Only an injector that doesn't shut counts in the ranking. How much one passes is no leak.";

  private DropTestText() {}

  static void print(DropReport report, Printout out) {
    out.println(Titles.shown(report.test().title()));
    out.println();
    CautionLines.FIRING.print(out);
    out.println(report.headline().word());
    report.verdict().forEach(sentence -> out.wrapped("", sentence));
    out.println();
    row(out, "Injector", "fired", "drop", "passes, against the", "flow, mL/min", "");
    row(out, "", "times", out.unit(), "middle one (90 %)", flowHead(report, out), "");
    for (InjectorDrop injector : report.injectors()) {
      row(
          out,
          injector.id(),
          injector.firings(),
          out.number(injector.meanDrop()),
          range(injector.departure()),
          injector.flow().map(DropTestText::flow).orElse("–"),
          standing(injector));
    }
    out.println();
    out.println("Assumed, and read from the files:");
    report.notes().forEach(note -> out.wrapped("  - ", note));
  }

  private static String flowHead(DropReport report, Printout out) {
    return "at " + out.pressure(report.pressure());
  }

  private static void row(Printout out, Object... cells) {
    out.println(String.format(Locale.ROOT, ROW, cells).stripTrailing());
  }

  private static String standing(InjectorDrop injector) {
    if (injector.staysOpen()) {
      return "doesn't shut";
    }
    if (!injector.moves()) {
      return "no drop";
    }
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
