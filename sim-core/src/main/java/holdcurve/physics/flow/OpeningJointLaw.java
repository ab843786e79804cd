package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Elastomer joint that stays shut until the pressure lifts it, then leaks in proportion to the
 * excess: Q = G w [S((d − p₀)/w) − S((−d − p₀)/w)] with the softplus S. The second term makes the
 * law odd and exactly zero without a difference; it means that the joint opens inward at the same
 * pressure, which a circuit under pressure never tries.
 *
 * @param conductance G of the lifted joint [m³/(s·Pa)]
 * @param openingPressure p₀ [Pa], zero or more
 * @param width w over which it opens [Pa]
 */
public record OpeningJointLaw(double conductance, double openingPressure, double width)
    implements FlowLaw {
  public OpeningJointLaw {
    Require.notNegative(conductance, "conductance", "m³/(s·Pa)");
    Require.notNegative(openingPressure, "opening pressure", "Pa");
    Require.positive(width, "opening width", "Pa");
  }

  /**
   * The joint that passes a given flow at a given pressure difference.
   *
   * @param flow [m³/s]
   * @param pressure [Pa], above zero
   * @param openingPressure [Pa], at most the pressure
   * @param width [Pa]
   */
  public static OpeningJointLaw throughPoint(
      double flow, double pressure, double openingPressure, double width) {
    Require.positive(pressure, "pressure difference", "Pa");
    Require.within(openingPressure, 0, pressure, "opening pressure", "Pa");
    double unit = new OpeningJointLaw(1, openingPressure, width).flow(pressure);
    return new OpeningJointLaw(flow / unit, openingPressure, width);
  }

  @Override
  public double flow(double difference) {
    double outward = Softplus.value((difference - openingPressure) / width);
    double inward = Softplus.value((-difference - openingPressure) / width);
    return conductance * width * (outward - inward);
  }

  @Override
  public double slope(double difference) {
    double outward = Softplus.slope((difference - openingPressure) / width);
    double inward = Softplus.slope((-difference - openingPressure) / width);
    return conductance * (outward + inward);
  }
}
