package holdcurve.ui.command;

import holdcurve.common.text.Rounded;
import holdcurve.inference.answer.Ranking;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.LeakShare;
import holdcurve.physics.circuit.Unit;
import java.util.List;
import java.util.Locale;

/** Where the fall of each test went, as a table. */
final class FallText {
  /** Parts that never reach this are left out [Pa]. */
  private static final double SHOWN = 500;

  private FallText() {}

  static void print(Ranking ranking, Printout out) {
    if (ranking.falls().isEmpty()) {
      return;
    }
    out.println("What made the needle fall (90 % range in brackets)");
    out.println("A minus means it held the needle up.");
    out.printf("%37s%24s%n", out.unit(), "mL");
    for (FallReport fall : ranking.falls()) {
      print(fall, out);
    }
    out.println();
  }

  private static void print(FallReport fall, Printout out) {
    out.printf(
        Locale.ROOT,
        "  %s: %s to %s in %.0f min, a fall of %s%n",
        fall.test(),
        out.number(fall.first()),
        out.pressure(fall.last()),
        (fall.to() - fall.from()) / 60,
        out.pressure(fall.fall(out.pressureUnit())));
    for (FallReport.Shown part : fall.shown(SHOWN, out.pressureUnit())) {
      print(part.title(), part.mean(), part.share().pressure(), part.share().volume(), out);
    }
    String first = fall.leaks().isEmpty() ? "" : fall.leaks().get(0).suspect();
    List<LeakShare> two = fall.leaks().stream().filter(l -> l.suspect().equals(first)).toList();
    if (two.size() > 1) {
      two.forEach(
          leak ->
              print(
                  "  if so, " + leak.where(),
                  leak.pressure().mean(),
                  leak.pressure(),
                  leak.volume(),
                  out));
    }
  }

  private static void print(
      String what, double mean, Amount pressure, Amount volume, Printout out) {
    String fall =
        String.format(
            Locale.ROOT,
            "    %-27s %5s %-16s",
            what.length() > 27 ? what.substring(0, 27) : what,
            out.number(mean),
            range(pressure, out));
    String millilitres =
        String.format(Locale.ROOT, " %5.2f %s", hundredths(volume.mean()), range(volume));
    boolean none = volume.low() == 0 && volume.high() == 0;
    out.println((none ? fall : fall + millilitres).stripTrailing());
  }

  /** Empty where both ends are the same. */
  private static String range(Amount pressure, Printout out) {
    String low = out.number(pressure.low());
    String high = out.number(pressure.high());
    return low.equals(high) ? "" : "(" + low + " to " + high + ")";
  }

  private static String range(Amount amount) {
    double low = hundredths(amount.low());
    double high = hundredths(amount.high());
    return low == high ? "" : String.format(Locale.ROOT, "(%.2f to %.2f)", low, high);
  }

  private static double hundredths(double volume) {
    return Rounded.hundredths(Unit.MILLILITRE.fromSi(volume));
  }
}
