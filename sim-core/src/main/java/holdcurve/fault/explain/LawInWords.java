package holdcurve.fault.explain;

import holdcurve.common.message.PartName;
import holdcurve.fault.FaultParameter;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.FlowLaw;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says how a leak depends on pressure, from what its law does and not from what it is called. */
final class LawInWords {
  private static final double USUAL = 2;
  private static final int STEPS = 40;
  private static final Pattern STATED = Pattern.compile("leak at ([0-9]+(\\.[0-9]+)?) bar\\b.*");

  /** A leak that passes less than this share of its flow at full pressure is called dry [-]. */
  private static final double DRY = 0.02;

  private final FlowLaw law;
  private final double bar;
  private final double most;

  private LawInWords(FlowLaw law, double bar) {
    this.law = law;
    this.bar = bar;
    this.most = flow(bar);
  }

  /**
   * @param size of the fault, whose name may say at which pressure it is meant: "leak at 2 bar"
   */
  static String of(LeakPath leak, FaultParameter size) {
    Matcher stated = STATED.matcher(size.name());
    double bar = stated.matches() ? Double.parseDouble(stated.group(1)) : USUAL;
    return "From "
        + PartName.of(leak.from())
        + " to "
        + PartName.of(leak.to())
        + ": "
        + new LawInWords(leak.law(), bar > 0 ? bar : USUAL).words();
  }

  private double flow(double pressure) {
    return law.flow(Unit.BAR.toSi(pressure));
  }

  private String words() {
    String at = " at " + Quantities.withUnit(Unit.BAR.toSi(bar), Unit.BAR);
    return most > 0
        ? Quantities.withUnit(most, Unit.MILLILITRE_PER_MINUTE) + at + ". " + shape()
        : "nothing" + at + ". It leaks only above that.";
  }

  private String shape() {
    double share = flow(bar / 2) / most;
    if (share < 0.3) {
      return "Nothing below about "
          + String.format(Locale.ROOT, "%.1f", driesUp())
          + " bar: the pressure has to lift it.";
    }
    String half = Quantities.withUnit(Unit.BAR.toSi(bar / 2), Unit.BAR);
    return String.format(Locale.ROOT, "At %s it passes %.0f %% of that. ", half, 100 * share)
        + slackening(share);
  }

  /** 50 % is laminar flow, 71 % free outflow through a hole. */
  private static String slackening(double share) {
    if (share < 0.47) {
      return "It slackens faster than the pressure falls.";
    }
    if (share < 0.53) {
      return "It slackens in proportion to the pressure.";
    }
    if (share < 0.66) {
      return "It slackens a little more slowly than the pressure.";
    }
    return share < 0.76
        ? "It slackens more slowly than the pressure, like a small hole."
        : "It hardly slackens while the pressure falls.";
  }

  private double driesUp() {
    int step = STEPS;
    while (step > 1 && flow(bar * step / STEPS) > DRY * most) {
      step--;
    }
    return bar * step / STEPS;
  }
}
