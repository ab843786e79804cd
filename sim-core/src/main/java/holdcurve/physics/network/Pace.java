package holdcurve.physics.network;

/**
 * How fast pressures change, which decides whether liquid and gas keep their temperature and
 * whether the mass of the fuel in lines counts.
 */
public enum Pace {
  /** Minutes: isothermal. Bulk modulus K_T, gas exponent 1, lines without mass. */
  SLOW(1),
  /**
   * Fractions of a second: isentropic. Bulk modulus K_S, gas exponent 1.4 (air), lines with mass.
   */
  FAST(1.4);

  private final double gasExponent;

  Pace(double gasExponent) {
    this.gasExponent = gasExponent;
  }

  /** Exponent n of p·Vⁿ for shut-in gas [-]. */
  public double gasExponent() {
    return gasExponent;
  }
}
