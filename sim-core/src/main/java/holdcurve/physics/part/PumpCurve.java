package holdcurve.physics.part;

import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.flow.Softplus;

/**
 * Flow of a running pump against the pressure it works against: Q₀ (1 − (p/p_stall)²), less what
 * its relief valve lets back.
 *
 * <p>As a {@link FlowLaw} the difference is upstream minus downstream, so minus the pressure it
 * works against. Not odd: a pump has a direction.
 *
 * @param freeFlow Q₀ [m³/s]
 * @param stall p_stall [Pa]
 * @param relief pressure at which the relief valve opens [Pa]
 */
record PumpCurve(double freeFlow, double stall, double relief) implements FlowLaw {
  /** The relief valve passes the whole free flow this far above its opening pressure [Pa]. */
  private static final double RELIEF_RISE = 3e4;

  private static final double RELIEF_WIDTH = 5e3;

  @Override
  public double flow(double difference) {
    double p = -difference;
    double delivered = freeFlow * (1 - p * Math.abs(p) / (stall * stall));
    return delivered - freeFlow / RELIEF_RISE * RELIEF_WIDTH * Softplus.value(over(p));
  }

  @Override
  public double slope(double difference) {
    double p = -difference;
    return 2 * freeFlow * Math.abs(p) / (stall * stall)
        + freeFlow / RELIEF_RISE * Softplus.slope(over(p));
  }

  private double over(double p) {
    return (p - relief) / RELIEF_WIDTH;
  }
}
