package holdcurve.physics.storage;

import holdcurve.common.input.Require;

/** Pressure waves in a filled line (Korteweg 1878, Joukowsky 1898). */
public final class PressureWave {

  /** How a thin-walled line is anchored, for the factor c₁ of Wylie and Streeter. */
  public enum Anchoring {
    /** Expansion joints throughout: c₁ = 1. */
    EXPANSION_JOINTS,
    /** Anchored at its upstream end only: c₁ = 1 − ν/2. */
    UPSTREAM,
    /** Anchored against axial movement throughout: c₁ = 1 − ν². */
    THROUGHOUT;

    /** The factor c₁ for a Poisson's ratio [-]. */
    public double factor(double poissonRatio) {
      return switch (this) {
        case EXPANSION_JOINTS -> 1;
        case UPSTREAM -> 1 - poissonRatio / 2;
        case THROUGHOUT -> 1 - poissonRatio * poissonRatio;
      };
    }
  }

  private PressureWave() {}

  /**
   * Wave speed in a line whose wall gives way, a = 1/√(ρ (1/K + D)).
   *
   * @param bulkModulus of the liquid, isentropic [Pa]
   * @param density [kg/m³]
   * @param distensibility relative growth of the bore volume per pressure [1/Pa], zero for rigid
   * @return [m/s]
   */
  public static double speed(double bulkModulus, double density, double distensibility) {
    Require.positive(bulkModulus, "bulk modulus", "Pa");
    Require.positive(density, "density", "kg/m³");
    Require.notNegative(distensibility, "distensibility", "1/Pa");
    return 1 / Math.sqrt(density * (1 / bulkModulus + distensibility));
  }

  /**
   * Relative growth of the bore volume of a thin-walled line, c₁ d/(E e).
   *
   * @param bore [m]
   * @param wall thickness [m]
   * @param youngsModulus [Pa]
   * @param anchoringFactor c₁ [-]
   * @return [1/Pa]
   */
  public static double thinWallDistensibility(
      double bore, double wall, double youngsModulus, double anchoringFactor) {
    Require.positive(wall, "wall thickness", "m");
    Require.positive(youngsModulus, "Young's modulus", "Pa");
    return anchoringFactor * Require.positive(bore, "bore", "m") / (youngsModulus * wall);
  }

  /**
   * Joukowsky's surge when the flow is stopped faster than the wave returns, ρ a Δv.
   *
   * @param density [kg/m³]
   * @param speed of the wave [m/s]
   * @param change of flow speed [m/s]
   * @return [Pa]
   */
  public static double surge(double density, double speed, double change) {
    return density * speed * change;
  }
}
