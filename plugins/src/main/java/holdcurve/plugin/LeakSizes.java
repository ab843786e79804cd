package holdcurve.plugin;

import holdcurve.circuit.Unit;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;

/** What the leaks of the first set have in common. */
final class LeakSizes {
  /** Pressure at which a leak is stated [Pa]. */
  static final double TEST_PRESSURE = 2e5;

  private LeakSizes() {}

  /**
   * The size of a leak.
   *
   * @param median [mL/min at 2 bar]
   * @param varies whether it differs from one hold to the next
   */
  static FaultParameter leak(double median, boolean varies) {
    return new FaultParameter(
        "leak at 2 bar",
        Unit.MILLILITRE_PER_MINUTE,
        new Prior.LogNormal(Unit.MILLILITRE_PER_MINUTE.toSi(median), 3),
        "assumed: 0.3 bar in five minutes, a common complaint, is about 0.1 mL/min",
        varies);
  }
}
