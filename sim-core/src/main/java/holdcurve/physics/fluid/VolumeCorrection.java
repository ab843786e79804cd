package holdcurve.physics.fluid;

/**
 * How a petroleum liquid expands, ASTM D1250-80 (API 2540), tables 54.
 *
 * @param expansionAt15 thermal expansion at 15 °C [1/K]
 */
record VolumeCorrection(double expansionAt15) {
  static final double FIFTEEN_CELSIUS = 288.15;

  /**
   * Density over that at 15 °C [-].
   *
   * @param temperature [K]
   */
  double densityRatio(double temperature) {
    double warmer = temperature - FIFTEEN_CELSIUS;
    return Math.exp(-expansionAt15 * warmer * (1 + 0.8 * expansionAt15 * warmer));
  }

  /**
   * Thermal expansion [1/K].
   *
   * @param temperature [K]
   */
  double expansion(double temperature) {
    return expansionAt15 * (1 + 1.6 * expansionAt15 * (temperature - FIFTEEN_CELSIUS));
  }
}
