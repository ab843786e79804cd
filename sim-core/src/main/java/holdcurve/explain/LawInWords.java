package holdcurve.explain;

import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Unit;
import holdcurve.flow.FlowLaw;
import java.util.Locale;

/** Says how a leak depends on pressure, from what its law does and not from what it is called. */
final class LawInWords {
  private static final double HIGH = Unit.BAR.toSi(2);
  private static final double LOW = Unit.BAR.toSi(1);
  private static final double STEP = Unit.BAR.toSi(0.05);

  /** A leak that passes less than this share of its flow at 2 bar is called dry [-]. */
  private static final double DRY = 0.02;

  private LawInWords() {}

  static String of(LeakPath leak) {
    String way = "From " + leak.from() + " to " + leak.to() + ": ";
    double most = leak.law().flow(HIGH);
    if (!(most > 0)) {
      return way + "nothing at 2 bar; it leaks only above that.";
    }
    String size = Quantities.withUnit(most, Unit.MILLILITRE_PER_MINUTE) + " at 2 bar";
    return way + size + ". " + shape(leak.law(), most);
  }

  private static String shape(FlowLaw law, double most) {
    double share = law.flow(LOW) / most;
    if (share < 0.3) {
      return "Dry below about "
          + String.format(Locale.ROOT, "%.1f", Unit.BAR.fromSi(driesUp(law, most)))
          + " bar: the pressure has to lift it.";
    }
    String half = String.format(Locale.ROOT, "At 1 bar it passes %.0f %% of that: ", 100 * share);
    return half + slackening(share);
  }

  /** 50 % is laminar flow, 71 % free outflow through a hole. */
  private static String slackening(double share) {
    if (share < 0.47) {
      return "it slackens faster than the pressure falls.";
    }
    if (share < 0.53) {
      return "it slackens in proportion to the pressure.";
    }
    if (share < 0.66) {
      return "it slackens a little more slowly than the pressure falls.";
    }
    return share < 0.76
        ? "it slackens more slowly than the pressure falls, as a small hole does."
        : "it hardly slackens while the pressure falls.";
  }

  private static double driesUp(FlowLaw law, double most) {
    double pressure = HIGH;
    while (pressure > STEP && law.flow(pressure) > DRY * most) {
      pressure -= STEP;
    }
    return pressure;
  }
}
