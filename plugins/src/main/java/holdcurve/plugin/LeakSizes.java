package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Seats;

/** What the leaks of the first set have in common. */
final class LeakSizes {
  /** Pressure at which a leak is stated [Pa]. */
  static final double TEST_PRESSURE = Seats.TEST_PRESSURE;

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

  /**
   * Where the flow through a hole or crack turns from laminar to free outflow.
   *
   * @param median [bar]
   * @param factor one standard deviation [-]
   * @param source without the word "assumed"
   */
  static FaultParameter transition(double median, double factor, String source) {
    return new FaultParameter(
        "pressure below which it seeps rather than runs",
        Unit.BAR,
        new Prior.LogNormal(Unit.BAR.toSi(median), factor),
        "assumed: " + source,
        false);
  }
}
