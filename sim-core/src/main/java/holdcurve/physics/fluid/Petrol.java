package holdcurve.physics.fluid;

import holdcurve.common.input.Require;
import holdcurve.common.number.Celsius;
import java.util.Locale;

/**
 * Petrol without ethanol, from two figures of its grade. A finished petrol is a mixture that nobody
 * measured for us, so the correlations below are priors:
 *
 * <ul>
 *   <li>density and thermal expansion: volume correction of ASTM D1250-80 (API 2540), table 54B,
 *       petrols and transition zone;
 *   <li>isothermal modulus: reciprocal of the compressibility of API MPMS 11.2.1M; it sits 7 %
 *       below n-heptane and n-octane when given their densities and falls with temperature as
 *       theirs does. Isentropic modulus: 1.25 times it, the ratio of those liquids. At 745 kg/m³
 *       and 20 °C this gives 0.90 and 1.13 GPa; published isentropic figures for petrol run from
 *       0.85 to 1.3 GPa, hence {@code modulusFactor} for inference, prior about 0.75 to 1.15;
 *   <li>viscosity: n-heptane times 1.10, i.e. 0.45 mPa·s at 20 °C (assumed; n-heptane 0.41,
 *       iso-octane 0.51, a textbook "gasoline" of 680 kg/m³ 0.31 at 15.6 °C), prior {@code
 *       viscosityFactor} about 0.7 to 1.2;
 *   <li>vapour pressure: {@link ReidVapourPressure}.
 * </ul>
 *
 * @param reidVapourPressure at 37.8 °C [Pa], 35 to 105 kPa
 * @param density15 at 15 °C [kg/m³], 720 to 775 as in EN 228
 * @param modulusFactor multiplies both bulk moduli [-], 0.5 to 2
 * @param viscosityFactor multiplies the viscosity [-], 0.5 to 2
 */
public record Petrol(
    double reidVapourPressure, double density15, double modulusFactor, double viscosityFactor)
    implements Fluid {
  /** Upper limit of the summer class A of EN 228 [Pa]. */
  public static final double SUMMER_REID_VAPOUR_PRESSURE = 60_000;

  /** Middle of the range of EN 228 [kg/m³]. */
  public static final double USUAL_DENSITY_15 = 745;

  private static final TemperatureRange RANGE = TemperatureRange.ofCelsius(-20, 90);
  private static final double MODULUS_RATIO = 1.25;
  private static final double VISCOSITY_OVER_HEPTANE = 1.10;
  private static final Compression ISOTHERMAL = new Compression(ATMOSPHERE, 11);
  private static final Compression ISENTROPIC = new Compression(ATMOSPHERE, 12.7);

  public Petrol {
    Require.within(reidVapourPressure, 35_000, 105_000, "Reid vapour pressure", "Pa");
    Require.within(density15, 720, 775, "density at 15 °C", "kg/m³");
    Require.within(modulusFactor, 0.5, 2, "modulus factor", "-");
    Require.within(viscosityFactor, 0.5, 2, "viscosity factor", "-");
  }

  /** Summer grade of middle density. */
  public static Petrol summer() {
    return of(SUMMER_REID_VAPOUR_PRESSURE, USUAL_DENSITY_15);
  }

  /** A grade by its two figures [Pa], [kg/m³], all factors one. */
  public static Petrol of(double reidVapourPressure, double density15) {
    return new Petrol(reidVapourPressure, density15, 1, 1);
  }

  @Override
  public String id() {
    return "petrol";
  }

  @Override
  public String name() {
    return "petrol without ethanol";
  }

  @Override
  public String source() {
    return String.format(Locale.ROOT, "%.0f kg/m³ at 15 °C, EN 228", density15);
  }

  @Override
  public TemperatureRange validRange() {
    return RANGE;
  }

  @Override
  public double density(double temperature, double pressure) {
    double volumeCorrection = expansion().densityRatio(check(temperature));
    return density15 * volumeCorrection * ISOTHERMAL.densityRatio(modulus(temperature), pressure);
  }

  @Override
  public double bulkModulusIsothermal(double temperature, double pressure) {
    return ISOTHERMAL.modulus(modulus(check(temperature)), pressure);
  }

  @Override
  public double bulkModulusIsentropic(double temperature, double pressure) {
    return ISENTROPIC.modulus(MODULUS_RATIO * modulus(check(temperature)), pressure);
  }

  @Override
  public double thermalExpansion(double temperature) {
    return expansion().expansion(check(temperature));
  }

  @Override
  public double viscosity(double temperature) {
    check(temperature);
    return viscosityFactor * VISCOSITY_OVER_HEPTANE * PureLiquid.nHeptane().viscosity(temperature);
  }

  @Override
  public double vapourPressure(double temperature) {
    return vapourPressureRaisedBy(0, temperature);
  }

  /** Vapour pressure [Pa absolute] if the Reid vapour pressure were higher by {@code lift} [Pa]. */
  double vapourPressureRaisedBy(double lift, double temperature) {
    return ReidVapourPressure.trueVapourPressure(reidVapourPressure + lift, check(temperature));
  }

  /** D1250 table 54B: petrols to about 770 kg/m³, transition zone above; the curves meet there. */
  private VolumeCorrection expansion() {
    double square = density15 * density15;
    double petrols = (346.4228 + 0.4388 * density15) / square;
    double transition = 2680.3206 / square - 0.00336312;
    return new VolumeCorrection(Math.min(petrols, transition));
  }

  /** MPMS 11.2.1M, compressibility in 1/GPa with density at 15 °C in kg/m³ and T in °C. */
  static double modulus(double density15, double temperature) {
    double celsius = Celsius.of(temperature);
    double square = density15 * density15;
    double perGigapascal =
        Math.exp(-1.62080 + 2.1592e-4 * celsius + (870_960 + 4209.2 * celsius) / square);
    return 1e9 / perGigapascal;
  }

  private double modulus(double temperature) {
    return modulusFactor * modulus(density15, temperature);
  }

  private double check(double temperature) {
    return RANGE.require(temperature, name());
  }
}
