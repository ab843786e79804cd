package holdcurve.common.message;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Units of gauge pressure that a log may be written in.
 *
 * <p>Factors: NIST Special Publication 811 (2008 edition), appendix B.8. The bar and its kin and
 * the kilogram-force per square centimetre are exact; psi is rounded there to seven digits.
 */
public enum PressureUnit {
  BAR("bar", 1e5, "bar", "barg", "bars", "bar g"),
  MBAR("mbar", 100, "mbar", "mbarg", "millibar"),
  HPA("hPa", 100, "hpa"),
  KPA("kPa", 1e3, "kpa", "kpag", "kilopascal"),
  MPA("MPa", 1e6, "mpa", "megapascal"),
  PA("Pa", 1, "pa", "pascal"),
  PSI("psi", 6894.757, "psi", "psig", "lbf/in2", "lb/in2"),
  KGF_PER_CM2("kg/cm²", 98066.5, "kg/cm2", "kgf/cm2", "kp/cm2", "kgcm2");

  private final String symbol;
  private final double pascals;
  private final Set<String> spellings;

  PressureUnit(String symbol, double pascals, String... spellings) {
    this.symbol = symbol;
    this.pascals = pascals;
    this.spellings = Set.of(spellings);
  }

  /** The unit as it is printed. */
  public String symbol() {
    return symbol;
  }

  /**
   * @param value in this unit
   * @return [Pa]
   */
  public double toPascal(double value) {
    return value * pascals;
  }

  /**
   * @param pressure [Pa]
   * @return in this unit
   */
  public double fromPascal(double pressure) {
    return pressure / pascals;
  }

  /** Finds the unit that a person wrote, in any case. */
  public static Optional<PressureUnit> of(String written) {
    if (written.isEmpty()) {
      return Optional.empty();
    }
    String plain = written.strip().toLowerCase(Locale.ROOT).replace('²', '2').replace("^2", "2");
    return Arrays.stream(values()).filter(unit -> unit.spellings.contains(plain)).findFirst();
  }
}
