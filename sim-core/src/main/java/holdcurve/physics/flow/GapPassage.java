package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * The ring gap between a plunger and its bore: Q = π D c³ Δp (1 + 1.5 ε²)/(12 µ L), the lubrication
 * approximation for a gap much smaller than the diameter (standard texts).
 *
 * @param diameter of the plunger [m]
 * @param clearance radial gap when centred [m], at most a tenth of the diameter
 * @param length along the flow [m]
 * @param eccentricity offset over clearance [-], 0 centred to 1 touching
 */
public record GapPassage(double diameter, double clearance, double length, double eccentricity)
    implements LaminarPassage {
  public GapPassage {
    Require.positive(diameter, "diameter", "m");
    Require.positive(clearance, "clearance", "m");
    Require.within(clearance, 0, diameter / 10, "clearance", "m");
    Require.positive(length, "length", "m");
    Require.within(eccentricity, 0, 1, "eccentricity", "-");
  }

  @Override
  public double conductance(double viscosity) {
    double cube = clearance * clearance * clearance;
    double eccentric = 1 + 1.5 * eccentricity * eccentricity;
    return Math.PI
        * diameter
        * cube
        * eccentric
        / (12 * Require.positive(viscosity, "viscosity", "Pa·s") * length);
  }

  /** {@inheritDoc} The hydraulic diameter is twice the clearance. */
  @Override
  public double reynolds(double flow, double density, double viscosity) {
    return 2 * density * Math.abs(flow) / (Math.PI * diameter * viscosity);
  }
}
