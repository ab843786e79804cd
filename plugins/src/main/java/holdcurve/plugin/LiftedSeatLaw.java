package holdcurve.plugin;

import holdcurve.physics.flow.FlowLaw;

/**
 * Leak past the seat of a relief valve that is still shut: the pressure takes load off the seat, so
 * the gap grows with it.
 *
 * <p>From first principles, as for a seat that pressure presses shut: the load on the seat is
 * p_open − d, a bed of contacts gives way to load as a power, and laminar flow goes as the gap
 * cubed, so Q = G d (1 − |d|/p_open)^(−m). Beyond nine tenths of p_open the law goes on along its
 * tangent: there the valve opens, which is no leak.
 *
 * @param conductance G of the seat under its full spring [m³/(s·Pa)]
 * @param opening p_open, pressure at which the valve opens [Pa]
 * @param loadExponent m [-], 0 to 1
 */
record LiftedSeatLaw(double conductance, double opening, double loadExponent) implements FlowLaw {
  private static final double LAST = 0.9;

  LiftedSeatLaw {
    if (!(conductance >= 0) || !(opening > 0) || !(loadExponent >= 0 && loadExponent <= 1)) {
      throw new IllegalArgumentException(
          "a lifted seat needs a conductance of zero or more, an opening pressure above zero and an "
              + "exponent from 0 to 1, not "
              + conductance
              + " m³/(s·Pa), "
              + opening
              + " Pa and "
              + loadExponent);
    }
  }

  /**
   * The seat that passes a given flow at a given pressure difference.
   *
   * @param flow [m³/s]
   * @param pressure [Pa], above zero
   */
  static LiftedSeatLaw throughPoint(
      double flow, double pressure, double opening, double loadExponent) {
    double unit = new LiftedSeatLaw(1, opening, loadExponent).flow(pressure);
    return new LiftedSeatLaw(flow / unit, opening, loadExponent);
  }

  @Override
  public double flow(double difference) {
    double size = Math.abs(difference);
    double inside = Math.min(size, LAST * opening);
    double flow = conductance * inside * gap(inside) + slope(inside) * (size - inside);
    return Math.copySign(flow, difference);
  }

  @Override
  public double slope(double difference) {
    double x = Math.min(Math.abs(difference) / opening, LAST);
    return conductance * gap(x * opening) * (1 + loadExponent * x / (1 - x));
  }

  private double gap(double difference) {
    return Math.pow(1 - difference / opening, -loadExponent);
  }
}
