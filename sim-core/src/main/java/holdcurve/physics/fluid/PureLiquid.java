package holdcurve.physics.fluid;

/**
 * n-heptane and ethanol.
 *
 * <p>Density and moduli are least-squares cubics through values at 3 bar absolute, 0 to 90 °C, of
 * reference equations of state: n-heptane by Span and Wagner, Int. J. Thermophys. 24 (2003) 41;
 * ethanol by Schroeder et al., J. Phys. Chem. Ref. Data 43 (2014) 043102. They stay within 0.02 %
 * in density, 0.2 % in modulus and 1.1 % in thermal expansion of those over 1 to 6 bar. Below 0 °C,
 * down to −20 °C, they are extrapolated: densities agree with Perry's within 0.3 %, the moduli
 * there were checked against nothing. Vapour pressure and viscosity: Perry's Chemical Engineers'
 * Handbook, 8th ed., tables 2-8 and 2-313.
 */
public final class PureLiquid implements Fluid {
  private static final double TABLE_PRESSURE = 3.0e5;
  private static final TemperatureRange RANGE = TemperatureRange.ofCelsius(-20, 90);

  private static final PureLiquid N_HEPTANE =
      new PureLiquid(
          "n-heptane",
          "n-heptane (test fluid)",
          "684 kg/m³ at 20 °C, Span and Wagner (2003)",
          new LogCubic(6.52795709, -0.12278578, -0.01215012, -0.00676412),
          new Elasticity(
              new LogCubic(20.39026808, -0.81881872, -0.0982576, -0.05950661),
              new Compression(TABLE_PRESSURE, 10.85)),
          new Elasticity(
              new LogCubic(20.624362, -0.84870215, -0.0882475, -0.05507093),
              new Compression(TABLE_PRESSURE, 12.7)),
          new Dippr101(-9.4622, 877.07, -0.23445, 1.4022e22, -10),
          new Dippr101(87.829, -6996.4, -9.8802, 7.2099e-6, 2));

  private static final PureLiquid ETHANOL =
      new PureLiquid(
          "ethanol",
          "ethanol",
          "790 kg/m³ at 20 °C, Schroeder and others (2014)",
          new LogCubic(6.67150169, -0.10801546, -0.01006131, -0.01435673),
          new Elasticity(
              new LogCubic(20.60713977, -0.66717148, -0.06091987, -0.14644855),
              new Compression(TABLE_PRESSURE, 11.6)),
          new Elasticity(
              new LogCubic(20.78339467, -0.691491902, -0.00322512681, -0.129155738),
              new Compression(TABLE_PRESSURE, 13.5)),
          new Dippr101(7.875, 781.98, -3.0418, 0, 0),
          new Dippr101(73.304, -7122.3, -7.1424, 2.8853e-6, 2));

  private final String id;
  private final String name;
  private final String source;
  private final LogCubic density;
  private final Elasticity isothermal;
  private final Elasticity isentropic;
  private final Dippr101 viscosity;
  private final Dippr101 vapourPressure;

  private record Elasticity(LogCubic atTablePressure, Compression law) {
    double modulus(double temperature, double pressure) {
      return law.modulus(atTablePressure.value(temperature), pressure);
    }

    double densityRatio(double temperature, double pressure) {
      return law.densityRatio(atTablePressure.value(temperature), pressure);
    }
  }

  private PureLiquid(
      String id,
      String name,
      String source,
      LogCubic density,
      Elasticity isothermal,
      Elasticity isentropic,
      Dippr101 viscosity,
      Dippr101 vapourPressure) {
    this.id = id;
    this.name = name;
    this.source = source;
    this.density = density;
    this.isothermal = isothermal;
    this.isentropic = isentropic;
    this.viscosity = viscosity;
    this.vapourPressure = vapourPressure;
  }

  /** The usual stand-in for petrol on an injector test bench. */
  public static PureLiquid nHeptane() {
    return N_HEPTANE;
  }

  /** The blending component; not offered as a fuel of its own. */
  public static PureLiquid ethanol() {
    return ETHANOL;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String source() {
    return source;
  }

  @Override
  public TemperatureRange validRange() {
    return RANGE;
  }

  @Override
  public double density(double temperature, double pressure) {
    double known = check(temperature);
    return density.value(known) * isothermal.densityRatio(known, pressure);
  }

  @Override
  public double bulkModulusIsothermal(double temperature, double pressure) {
    return isothermal.modulus(check(temperature), pressure);
  }

  @Override
  public double bulkModulusIsentropic(double temperature, double pressure) {
    return isentropic.modulus(check(temperature), pressure);
  }

  @Override
  public double thermalExpansion(double temperature) {
    return -density.logSlope(check(temperature));
  }

  @Override
  public double viscosity(double temperature) {
    return viscosity.value(check(temperature));
  }

  @Override
  public double vapourPressure(double temperature) {
    return vapourPressure.value(check(temperature));
  }

  private double check(double temperature) {
    return RANGE.require(temperature, name);
  }
}
