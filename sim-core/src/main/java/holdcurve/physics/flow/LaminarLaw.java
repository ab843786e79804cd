package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Flow proportional to pressure difference.
 *
 * @param conductance [m³/(s·Pa)], zero for a passage that is shut
 */
public record LaminarLaw(double conductance) implements FlowLaw {
  public LaminarLaw {
    Require.notNegative(conductance, "conductance", "m³/(s·Pa)");
  }

  /**
   * The law that passes a given flow at a given pressure difference.
   *
   * @param flow [m³/s]
   * @param pressure [Pa], above zero
   */
  public static LaminarLaw throughPoint(double flow, double pressure) {
    return new LaminarLaw(flow / Require.positive(pressure, "pressure difference", "Pa"));
  }

  @Override
  public double flow(double difference) {
    return conductance * difference;
  }

  @Override
  public double slope(double difference) {
    return conductance;
  }
}
