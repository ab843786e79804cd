package holdcurve.physics.fluid;

import holdcurve.common.input.Require;

/**
 * Bulk modulus rising linearly with pressure, and the density that follows from it (Murnaghan,
 * Proc. Natl. Acad. Sci. 30 (1944) 244; here with the slope of the liquid).
 *
 * @param reference pressure at which modulus and density are given [Pa absolute]
 * @param slope dK/dp [-]
 */
record Compression(double reference, double slope) {
  /** Modulus at a pressure [Pa], from the modulus at the reference pressure [Pa]. */
  double modulus(double atReference, double pressure) {
    return atReference + slope * rise(pressure);
  }

  /** Density at a pressure over density at the reference pressure [-]. */
  double densityRatio(double modulusAtReference, double pressure) {
    return Math.exp(Math.log1p(slope * rise(pressure) / modulusAtReference) / slope);
  }

  private double rise(double pressure) {
    return Require.within(pressure, 0, Fluid.MAX_PRESSURE, "absolute pressure", "Pa") - reference;
  }
}
