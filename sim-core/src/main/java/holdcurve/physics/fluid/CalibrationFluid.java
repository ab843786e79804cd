package holdcurve.physics.fluid;

/**
 * Calibration fluid after ISO 4113, the oil that some benches run with instead of a petrol-like
 * fluid. The standard (2010, table 1) wants 820 to 830 kg/m³ at 15 °C and 2.45 to 2.75 mm²/s at 40
 * °C; the middles are taken.
 *
 * <ul>
 *   <li>thermal expansion: ASTM D1250-80 (API 2540), table 54B, kerosines, K0 = 594.5418 (from
 *       memory);
 *   <li>isothermal modulus: reciprocal of the compressibility of API MPMS 11.2.1M; isentropic 1.16
 *       times it, which agrees with a speed of sound near 1330 m/s at 20 °C (from memory);
 *   <li>viscosity: exponential in 1/T through the standard's figure at 40 °C and 4.0 mm²/s at 20 °C
 *       (from memory);
 *   <li>vapour pressure: next to none, taken as 50 Pa (from memory: flash point above 75 °C).
 * </ul>
 */
public final class CalibrationFluid implements Fluid {
  private static final CalibrationFluid ISO_4113 = new CalibrationFluid();

  private static final TemperatureRange RANGE = TemperatureRange.ofCelsius(-20, 90);
  private static final double DENSITY_15 = 825;
  private static final VolumeCorrection EXPANSION =
      new VolumeCorrection(594.5418 / (DENSITY_15 * DENSITY_15));
  private static final double MODULUS_RATIO = 1.16;
  private static final Compression LAW = new Compression(ATMOSPHERE, 11);

  private static final double WARM = 313.15;
  private static final double WARM_VISCOSITY = 2.6e-6 * 807;
  private static final double COOL = 293.15;
  private static final double COOL_VISCOSITY = 4.0e-6 * 821.4;

  private CalibrationFluid() {}

  /** Middle of the standard's ranges. */
  public static CalibrationFluid iso4113() {
    return ISO_4113;
  }

  @Override
  public String id() {
    return "calibration-fluid";
  }

  @Override
  public String name() {
    return "calibration fluid (ISO 4113)";
  }

  @Override
  public String source() {
    return "825 kg/m³ at 15 °C, ISO 4113:2010";
  }

  @Override
  public TemperatureRange validRange() {
    return RANGE;
  }

  @Override
  public double density(double temperature, double pressure) {
    double volumeCorrection = EXPANSION.densityRatio(check(temperature));
    return DENSITY_15 * volumeCorrection * LAW.densityRatio(modulus(temperature), pressure);
  }

  @Override
  public double bulkModulusIsothermal(double temperature, double pressure) {
    return LAW.modulus(modulus(check(temperature)), pressure);
  }

  @Override
  public double bulkModulusIsentropic(double temperature, double pressure) {
    return LAW.modulus(MODULUS_RATIO * modulus(check(temperature)), pressure);
  }

  @Override
  public double thermalExpansion(double temperature) {
    return EXPANSION.expansion(check(temperature));
  }

  @Override
  public double viscosity(double temperature) {
    double share = (1 / check(temperature) - 1 / WARM) / (1 / COOL - 1 / WARM);
    return WARM_VISCOSITY * Math.pow(COOL_VISCOSITY / WARM_VISCOSITY, share);
  }

  @Override
  public double vapourPressure(double temperature) {
    check(temperature);
    return 50;
  }

  private static double modulus(double temperature) {
    return Petrol.modulus(DENSITY_15, temperature);
  }

  private double check(double temperature) {
    return RANGE.require(temperature, name());
  }
}
