package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Fallback for a leak of unknown kind: Q = k d (d² + L²)^((n−1)/2), which is k dⁿ at large
 * difference and linear near zero.
 *
 * @param coefficient k [m³/(s·Paⁿ)]
 * @param exponent n [-], 0.3 to 1.5
 * @param transitionPressure L, where the linear part ends [Pa]
 */
public record PowerLaw(double coefficient, double exponent, double transitionPressure)
    implements FlowLaw {
  public PowerLaw {
    Require.notNegative(coefficient, "power law coefficient", "m³/(s·Paⁿ)");
    Require.within(exponent, 0.3, 1.5, "flow exponent", "-");
    Require.positive(transitionPressure, "transition pressure", "Pa");
  }

  /**
   * The law of that exponent that passes a given flow at a given pressure difference.
   *
   * @param flow [m³/s]
   * @param pressure [Pa], above zero
   * @param exponent [-], 0.3 to 1.5
   * @param transitionPressure [Pa], above zero
   */
  public static PowerLaw throughPoint(
      double flow, double pressure, double exponent, double transitionPressure) {
    Require.positive(pressure, "pressure difference", "Pa");
    double unit = new PowerLaw(1, exponent, transitionPressure).flow(pressure);
    return new PowerLaw(flow / unit, exponent, transitionPressure);
  }

  @Override
  public double flow(double difference) {
    double sum = difference * difference + transitionPressure * transitionPressure;
    return coefficient * difference * Math.pow(sum, (exponent - 1) / 2);
  }

  @Override
  public double slope(double difference) {
    double square = difference * difference;
    double limit = transitionPressure * transitionPressure;
    double sum = square + limit;
    return coefficient * Math.pow(sum, (exponent - 3) / 2) * (exponent * square + limit);
  }
}
