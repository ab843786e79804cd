package holdcurve.ui.command;

import holdcurve.advice.whatif.Comparison;
import holdcurve.advice.whatif.Outlook;
import holdcurve.common.number.Chance;
import holdcurve.common.number.Interval;
import holdcurve.inference.answer.HoldCurve;
import java.util.Locale;

/** A comparison as text for a terminal, 80 columns wide. */
final class WhatIfText {
  private static final double[] SHOWN_MINUTES = {0, 1, 2, 5, 10};
  private static final String ROW = "  %-26s%-22s%-22s%n";

  private WhatIfText() {}

  static void print(Comparison comparison, Printout out) {
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
    row(out, "Hold, no clamp, " + out.unit(), "", "");
    for (double minutes : SHOWN_MINUTES) {
      String when = minutes == 0 ? "at the pump stop" : String.format("after %.0f min", minutes);
      row(out, "  " + when, pressure(before, minutes, out), pressure(after, minutes, out));
    }
    row(
        out,
        "Chance that it passes",
        Chance.words(before.hold().passChance()),
        Chance.words(after.hold().passChance()));
    row(out, "  which asks for", limit(before, out), limit(after, out));
    row(out, "Build-up", seconds(before.buildUp()), seconds(after.buildUp()));
    row(
        out,
        "Pump on, engine off, " + out.unit(),
        range(before.primed(), out),
        range(after.primed(), out));
    row(out, "Engine at idle, " + out.unit(), range(before.idle(), out), range(after.idle(), out));
    row(
        out,
        "Engine at full load, " + out.unit(),
        range(before.fullLoad(), out),
        range(after.fullLoad(), out));
    out.println();
    out.println("In brackets: the 90 % range.");
    comparison.notes().forEach(note -> Wrapped.print(out, "", note));
  }

  private static void row(Printout out, String name, String before, String after) {
    out.println(String.format(Locale.ROOT, ROW, name, before, after).stripTrailing());
  }

  private static String pressure(Outlook outlook, double minutes, Printout out) {
    HoldCurve hold = outlook.hold().curve();
    int k = java.util.Arrays.binarySearch(hold.time(), minutes * 60);
    return k < 0 ? "" : range(new Interval(hold.low()[k], hold.middle()[k], hold.high()[k]), out);
  }

  private static String range(Interval value, Printout out) {
    return ranged(out.number(value.middle()), out.number(value.low()), out.number(value.high()));
  }

  private static String seconds(Interval value) {
    return ranged(
        String.format(Locale.ROOT, "%.1f s", value.middle()),
        String.format(Locale.ROOT, "%.1f", value.low()),
        String.format(Locale.ROOT, "%.1f", value.high()));
  }

  /** The middle alone where both ends are the same. */
  private static String ranged(String middle, String low, String high) {
    return low.equals(high) ? middle : middle + " (" + low + " to " + high + ")";
  }

  private static String limit(Outlook outlook, Printout out) {
    return String.format(
        Locale.ROOT,
        "%s after %.0f min",
        out.pressure(outlook.hold().limit().pressure()),
        outlook.hold().limit().time() / 60);
  }
}
