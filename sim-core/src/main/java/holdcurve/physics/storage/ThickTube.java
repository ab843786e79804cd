package holdcurve.physics.storage;

import holdcurve.common.input.Require;

/**
 * Elastic tube under internal pressure after Lamé, exact for any wall thickness: hoop stress at the
 * bore p (ro² + ri²)/(ro² − ri²), radial −p, and the bore volume grows by 2 εθ + εz.
 *
 * @param innerRadius [m]
 * @param outerRadius [m]
 * @param youngsModulus [Pa]
 * @param poissonRatio [-], 0 to 0.5
 * @param ends what holds the tube lengthwise
 */
public record ThickTube(
    double innerRadius, double outerRadius, double youngsModulus, double poissonRatio, Ends ends) {

  /** What the ends of the tube do. */
  public enum Ends {
    /** Free to move, pressure carried elsewhere: no axial stress. */
    OPEN,
    /** Closed and free to move: the wall carries the end load. */
    CLOSED,
    /** Clamped so that the length stays: no axial strain. */
    HELD
  }

  public ThickTube {
    Require.positive(innerRadius, "inner radius", "m");
    Require.positive(outerRadius - innerRadius, "wall thickness", "m");
    Require.positive(youngsModulus, "Young's modulus", "Pa");
    Require.within(poissonRatio, 0, 0.5, "Poisson's ratio", "-");
  }

  /** Relative growth of the bore volume per pressure [1/Pa]. */
  public double distensibility() {
    double inner = innerRadius * innerRadius;
    double wall = outerRadius * outerRadius - inner;
    double hoop = (outerRadius * outerRadius + inner) / wall;
    double axial =
        switch (ends) {
          case OPEN -> 0;
          case CLOSED -> inner / wall;
          case HELD -> poissonRatio * (hoop - 1);
        };
    double hoopStrain = hoop - poissonRatio * (axial - 1);
    double axialStrain = axial - poissonRatio * (hoop - 1);
    return (2 * hoopStrain + axialStrain) / youngsModulus;
  }
}
