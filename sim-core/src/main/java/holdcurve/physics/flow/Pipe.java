package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Geometry of a pipe or hose run.
 *
 * @param bore [m]
 * @param length [m]
 * @param roughness equivalent sand roughness [m], up to a twentieth of the bore
 * @param fittingLoss sum of the loss coefficients K of ends, bends and fittings, on the speed in
 *     the bore [-]
 */
public record Pipe(double bore, double length, double roughness, double fittingLoss) {
  public Pipe {
    Require.positive(bore, "bore", "m");
    Require.positive(length, "length", "m");
    Require.within(roughness, 0, bore / 20, "roughness", "m");
    Require.notNegative(fittingLoss, "fitting loss", "-");
  }

  /** Cross-section [m²]. */
  public double area() {
    return Math.PI * bore * bore / 4;
  }
}
