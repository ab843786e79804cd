package holdcurve.calibration.blind;

import java.util.function.DoubleUnaryOperator;

/**
 * How one hold is really done.
 *
 * @param pressure when the pump stops [Pa]
 * @param soak how long the pump had run [s]
 * @param feed the clamp on the feed hose
 * @param back the clamp on the return hose
 * @param warming of fuel under the bonnet since the pump stopped [K], by time [s]
 * @param floorWarming likewise in the feed line
 */
record HoldPlan(
    double pressure,
    double soak,
    Clamp feed,
    Clamp back,
    DoubleUnaryOperator warming,
    DoubleUnaryOperator floorWarming) {
  /**
   * @param at when it goes on [s]; infinite for never
   * @param slip what gets past at 2 bar [m³/s]
   * @param pushed fuel pushed to either side [m³]
   */
  record Clamp(double at, double slip, double pushed) {
    static final Clamp NONE = new Clamp(Double.POSITIVE_INFINITY, 0, 0);
  }
}
