package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Short hole: square-root law at large difference, linear at small. Q = K φ(d, L) with φ = d/(d² +
 * L²)^(1/4). The discharge coefficient then rises as the root of the Reynolds number until it
 * settles, as measured coefficients do; their overshoot by a sixth near Re 100 is left out.
 *
 * @param coefficient K = C A √(2/ρ) [m³/(s·Pa^½)]
 * @param transitionPressure L, where the linear part ends [Pa]
 */
public record OrificeLaw(double coefficient, double transitionPressure) implements FlowLaw {
  /**
   * Reynolds number on hole diameter at which the low and the high asymptote of the discharge
   * coefficient cross [-]. From Hollingshead's computed coefficients for plate orifices (2011),
   * ratio of diameters 0.5: 0.233 at pipe Reynolds number 1 against 0.614 in the end.
   */
  public static final double TRANSITION_REYNOLDS = 14;

  public OrificeLaw {
    Require.notNegative(coefficient, "orifice coefficient", "m³/(s·Pa^½)");
    Require.positive(transitionPressure, "transition pressure", "Pa");
  }

  /**
   * A sharp round hole.
   *
   * @param diameter [m]
   * @param discharge discharge coefficient at high Reynolds number [-], about 0.62
   * @param density [kg/m³]
   * @param viscosity dynamic [Pa·s]
   */
  public static OrificeLaw hole(
      double diameter, double discharge, double density, double viscosity) {
    Require.positive(diameter, "diameter", "m");
    Require.within(discharge, 0.1, 1, "discharge coefficient", "-");
    Require.positive(density, "density", "kg/m³");
    Require.positive(viscosity, "viscosity", "Pa·s");
    double area = Math.PI * diameter * diameter / 4;
    double rootOfPressure = TRANSITION_REYNOLDS * viscosity / (discharge * diameter);
    return new OrificeLaw(
        discharge * area * Math.sqrt(2 / density), rootOfPressure * rootOfPressure / (2 * density));
  }

  /**
   * The law that passes a given flow at a given pressure difference.
   *
   * @param flow [m³/s]
   * @param pressure [Pa], above zero
   * @param transitionPressure [Pa], above zero
   */
  public static OrificeLaw throughPoint(double flow, double pressure, double transitionPressure) {
    Require.positive(pressure, "pressure difference", "Pa");
    double unit = new OrificeLaw(1, transitionPressure).flow(pressure);
    return new OrificeLaw(flow / unit, transitionPressure);
  }

  @Override
  public double flow(double difference) {
    double sum = difference * difference + transitionPressure * transitionPressure;
    return coefficient * difference / Math.sqrt(Math.sqrt(sum));
  }

  @Override
  public double slope(double difference) {
    double square = difference * difference;
    double limit = transitionPressure * transitionPressure;
    double sum = square + limit;
    return coefficient * (square / 2 + limit) / (sum * Math.sqrt(Math.sqrt(sum)));
  }
}
