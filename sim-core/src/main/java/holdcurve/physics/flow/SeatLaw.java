package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Leak past a closed seat whose gap closes as the load on it grows.
 *
 * <p>From first principles: laminar flow through a gap h goes as h³ d; the load is the closing
 * spring's preload plus the pressure difference, p₀ + |d|; and a bed of contacts gives way to load
 * as a power, h ∝ load^(−m/3). So Q = G d (1 + |d|/p₀)^(−m), with |d| rounded off within a tenth of
 * p₀ to stay smooth. At large difference Q grows as d^(1−m). For m = 0 the seat is rigid and the
 * law laminar; at m = 1 the flow levels off at G p₀. A seat that leaks less in absolute terms when
 * pressed harder (m above 1) is left out, since its flow would fall with pressure. Loaded from the
 * other side it is taken to behave alike.
 *
 * @param conductance G of the unloaded seat [m³/(s·Pa)]
 * @param preload p₀, closing force over seat area [Pa]
 * @param loadExponent m [-], 0 to 1
 */
public record SeatLaw(double conductance, double preload, double loadExponent) implements FlowLaw {
  private static final double ROUNDING = 0.1;

  public SeatLaw {
    Require.notNegative(conductance, "conductance", "m³/(s·Pa)");
    Require.positive(preload, "preload", "Pa");
    Require.within(loadExponent, 0, 1, "load exponent", "-");
  }

  /**
   * The seat that passes a given flow at a given pressure difference.
   *
   * @param flow [m³/s]
   * @param pressure [Pa], above zero
   * @param preload [Pa]
   * @param loadExponent [-], 0 to 1
   */
  public static SeatLaw throughPoint(
      double flow, double pressure, double preload, double loadExponent) {
    Require.positive(pressure, "pressure difference", "Pa");
    double unit = new SeatLaw(1, preload, loadExponent).flow(pressure);
    return new SeatLaw(flow / unit, preload, loadExponent);
  }

  @Override
  public double flow(double difference) {
    double load = 1 + rounded(difference / preload) - ROUNDING;
    return conductance * difference * Math.pow(load, -loadExponent);
  }

  @Override
  public double slope(double difference) {
    double x = difference / preload;
    double rounded = rounded(x);
    double load = 1 + rounded - ROUNDING;
    return conductance
        * Math.pow(load, -loadExponent - 1)
        * (load - loadExponent * x * x / rounded);
  }

  private static double rounded(double x) {
    return Math.sqrt(x * x + ROUNDING * ROUNDING);
  }
}
