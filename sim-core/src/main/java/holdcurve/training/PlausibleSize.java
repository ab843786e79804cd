package holdcurve.training;

import holdcurve.fault.FaultParameter;
import java.util.Locale;

/**
 * Which sizes of a hidden fault can be met with. A size in SI is easily typed as one in mL/min, and
 * is then tens of millions of times too large.
 *
 * @param parameter that says how bad the fault is
 */
public record PlausibleSize(FaultParameter parameter) {
  /** Standard deviations of the prior to either side: assumed [-]. */
  private static final double REACH = 4;

  /**
   * Whether a size can be met with.
   *
   * @param size [SI]
   */
  public boolean holds(double size) {
    return size >= end(-REACH) && size <= end(REACH);
  }

  private double end(double z) {
    return parameter.prior().at(z);
  }

  /** The range, in the unit in which the fault is shown: "0.02 to 14 mL/min". */
  public String inUnit() {
    return String.format(
        Locale.ROOT,
        "%.2g to %.2g %s",
        parameter.unit().fromSi(end(-REACH)),
        parameter.unit().fromSi(end(REACH)),
        parameter.unit().symbol());
  }

  /** The range as files state it. */
  public String inSi() {
    return String.format(Locale.ROOT, "%.2g to %.2g", end(-REACH), end(REACH));
  }
}
