package holdcurve.ui.command;

import holdcurve.common.text.Rounded;
import holdcurve.inference.answer.Ranking;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.physics.balance.LeakShare;
import holdcurve.physics.circuit.Unit;
import java.util.List;
import java.util.Locale;

/** Where the fall of each test went, as a table. */
final class FallText {
  /** Parts that never reach this are left out [bar]. */
  private static final double SHOWN = 0.005;

  private FallText() {}

  static void print(Ranking ranking, Printout out) {
    if (ranking.falls().isEmpty()) {
      return;
    }
    out.println("Where the fall went (in brackets: the range that holds it nine times in ten)");
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
        out.pressure(fall.fall()));
    for (FallShare share : fall.shares()) {
      if (reaches(share.pressure())) {
        print(share.cause().title(), share.pressure(), share.volume(), out);
      }
    }
    String first = fall.leaks().isEmpty() ? "" : fall.leaks().get(0).suspect();
    List<LeakShare> two = fall.leaks().stream().filter(l -> l.suspect().equals(first)).toList();
    if (two.size() > 1) {
      two.forEach(leak -> print("  if so, " + leak.where(), leak.pressure(), leak.volume(), out));
    }
  }

  private static boolean reaches(Amount pressure) {
    double most = Math.max(Math.abs(pressure.low()), Math.abs(pressure.high()));
    return Unit.BAR.fromSi(most) >= SHOWN;
  }

  private static void print(String what, Amount pressure, Amount volume, Printout out) {
    String fall =
        String.format(
            Locale.ROOT,
            "    %-27s %5s %-16s",
            what.length() > 27 ? what.substring(0, 27) : what,
            out.number(pressure.mean()),
            "(" + out.number(pressure.low()) + " to " + out.number(pressure.high()) + ")");
    String millilitres =
        String.format(Locale.ROOT, " %5.2f %s", hundredths(volume.mean()), range(volume));
    boolean none = volume.low() == 0 && volume.high() == 0;
    out.println((none ? fall : fall + millilitres).stripTrailing());
  }

  private static String range(Amount amount) {
    return String.format(
        Locale.ROOT, "(%.2f to %.2f)", hundredths(amount.low()), hundredths(amount.high()));
  }

  private static double hundredths(double volume) {
    return Rounded.hundredths(Unit.MILLILITRE.fromSi(volume));
  }
}
