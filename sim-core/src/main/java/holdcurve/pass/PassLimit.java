package holdcurve.pass;

import holdcurve.check.Require;
import holdcurve.circuit.Circuit;
import holdcurve.part.Regulator;

/**
 * The least pressure that a hold without clamps must still show some time after the pump stopped.
 *
 * @param pressure least reading [Pa gauge]
 * @param time after the pump stop at which it is read [s]
 */
public record PassLimit(double pressure, double time) {
  /**
   * Of a circuit set to 2.0 bar, 1.7 bar must be left after five minutes: common practice, no
   * source. Other set pressures in proportion.
   */
  private static final double USUAL_SHARE = 0.85;

  private static final double USUAL_TIME = 300;

  public PassLimit {
    Require.positive(pressure, "least pressure", "Pa");
    Require.positive(time, "time of the pass limit", "s");
  }

  /**
   * The limit for a circuit about which its job says nothing.
   *
   * @param setPressure of the regulator [Pa gauge]
   */
  public static PassLimit usual(double setPressure) {
    return new PassLimit(USUAL_SHARE * setPressure, USUAL_TIME);
  }

  /** Likewise, with the set pressure of the first regulator of {@code circuit}. */
  public static PassLimit usual(Circuit circuit) {
    return usual(circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET));
  }
}
