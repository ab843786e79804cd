package holdcurve.ui.command;

import holdcurve.circuit.Unit;
import holdcurve.infer.Chance;
import holdcurve.infer.HoldCurve;
import holdcurve.infer.Interval;
import holdcurve.whatif.Comparison;
import holdcurve.whatif.Outlook;
import java.io.PrintWriter;
import java.util.Locale;

/** A comparison as text for a terminal, 80 columns wide. */
final class WhatIfText {
  private static final double[] SHOWN_MINUTES = {0, 1, 2, 5, 10};
  private static final String ROW = "  %-26s%-22s%-22s%n";

  private WhatIfText() {}

  static void print(Comparison comparison, PrintWriter out) {
    out.println(comparison.title());
    out.println();
    if (comparison.changes().isEmpty()) {
      out.println("Nothing is changed. See 'whatif --help' for what can be.");
    }
    comparison.changes().forEach(change -> out.println("Change: " + change));
    out.println();
    Outlook before = comparison.before();
    Outlook after = comparison.after();
    row(out, "", "before", "after");
    row(out, "Hold, no clamp, bar", "", "");
    for (double minutes : SHOWN_MINUTES) {
      String when = minutes == 0 ? "at the pump stop" : String.format("after %.0f min", minutes);
      row(out, "  " + when, pressure(before, minutes), pressure(after, minutes));
    }
    row(
        out,
        "Chance that it passes",
        Chance.words(before.hold().passChance()),
        Chance.words(after.hold().passChance()));
    row(out, "  which asks for", limit(before), limit(after));
    row(out, "Build-up", seconds(before.buildUp()), seconds(after.buildUp()));
    row(out, "Pump on, engine off, bar", bar(before.primed()), bar(after.primed()));
    row(out, "Engine at idle, bar", bar(before.idle()), bar(after.idle()));
    row(out, "Engine at full load, bar", bar(before.fullLoad()), bar(after.fullLoad()));
    out.println();
    out.println("In brackets the range that holds it with 90 %.");
    comparison.notes().forEach(note -> Wrapped.print(out, "", note));
  }

  private static void row(PrintWriter out, String name, String before, String after) {
    out.println(String.format(Locale.ROOT, ROW, name, before, after).stripTrailing());
  }

  private static String pressure(Outlook outlook, double minutes) {
    HoldCurve hold = outlook.hold().curve();
    int k = java.util.Arrays.binarySearch(hold.time(), minutes * 60);
    return k < 0 ? "" : bar(new Interval(hold.low()[k], hold.middle()[k], hold.high()[k]));
  }

  static String bar(Interval value) {
    return String.format(
        Locale.ROOT,
        "%.2f (%.2f to %.2f)",
        Unit.BAR.fromSi(value.middle()),
        Unit.BAR.fromSi(value.low()),
        Unit.BAR.fromSi(value.high()));
  }

  private static String seconds(Interval value) {
    return String.format(
        Locale.ROOT, "%.1f s (%.1f to %.1f)", value.middle(), value.low(), value.high());
  }

  private static String limit(Outlook outlook) {
    return String.format(
        Locale.ROOT,
        "%.2f bar after %.0f min",
        Unit.BAR.fromSi(outlook.hold().limit().pressure()),
        outlook.hold().limit().time() / 60);
  }
}
