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

  /**
   * A round tube, with no check that the flow is laminar: see {@link TubePassage#laminar}.
   *
   * @param radius [m]
   * @param length [m]
   * @param viscosity dynamic [Pa·s]
   */
  public static LaminarLaw tube(double radius, double length, double viscosity) {
    return new LaminarLaw(new TubePassage(radius, length).conductance(viscosity));
  }

  /**
   * A gap between a plunger and its bore, with no check that the flow is laminar: see {@link
   * GapPassage#laminar}.
   *
   * @param diameter of the plunger [m]
   * @param clearance radial gap when centred [m]
   * @param length along the flow [m]
   * @param eccentricity offset over clearance [-], 0 centred to 1 touching
   * @param viscosity dynamic [Pa·s]
   */
  public static LaminarLaw annularGap(
      double diameter, double clearance, double length, double eccentricity, double viscosity) {
    return new LaminarLaw(
        new GapPassage(diameter, clearance, length, eccentricity).conductance(viscosity));
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
