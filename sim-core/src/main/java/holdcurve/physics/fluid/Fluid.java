package holdcurve.physics.fluid;

/**
 * A liquid as the model needs it. Implementations are immutable. Every method throws {@link
 * IllegalArgumentException} for a temperature outside {@link #validRange()} or an absolute pressure
 * outside 0 to {@link #MAX_PRESSURE}; the message holds the value, its unit and the range.
 */
public interface Fluid {
  /** Standard atmosphere [Pa absolute]; {@link #density(double)} is taken there. */
  double ATMOSPHERE = 101_325;

  /** Highest pressure the compression law was checked for, with room to spare [Pa absolute]. */
  double MAX_PRESSURE = 1.0e7;

  /** The name used in files, such as {@code petrol-e10}. */
  String id();

  /** The name shown to people. */
  String name();

  /** Where its density comes from, in a few words for people. */
  String source();

  /** Temperatures for which the correlations may be used [K]. */
  TemperatureRange validRange();

  /**
   * Density at one standard atmosphere.
   *
   * @param temperature [K]
   * @return [kg/m³]
   */
  default double density(double temperature) {
    return density(temperature, ATMOSPHERE);
  }

  /**
   * @param temperature [K]
   * @param pressure absolute [Pa]
   * @return density [kg/m³]
   */
  double density(double temperature, double pressure);

  /**
   * Isothermal bulk modulus K_T = ρ (∂p/∂ρ)_T.
   *
   * @param temperature [K]
   * @param pressure absolute [Pa]
   * @return [Pa]
   */
  double bulkModulusIsothermal(double temperature, double pressure);

  /**
   * Isentropic bulk modulus K_S = ρ (∂p/∂ρ)_S.
   *
   * @param temperature [K]
   * @param pressure absolute [Pa]
   * @return [Pa]
   */
  double bulkModulusIsentropic(double temperature, double pressure);

  /**
   * Volumetric thermal expansion α = −(∂ρ/∂T)_p / ρ at low pressure.
   *
   * @param temperature [K]
   * @return [1/K]
   */
  double thermalExpansion(double temperature);

  /**
   * Dynamic viscosity at low pressure.
   *
   * @param temperature [K]
   * @return [Pa·s]
   */
  double viscosity(double temperature);

  /**
   * True vapour pressure: the liquid at its bubble point.
   *
   * @param temperature [K]
   * @return absolute [Pa]
   */
  double vapourPressure(double temperature);
}
