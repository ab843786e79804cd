package holdcurve.record.log;

import holdcurve.common.number.Celsius;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Units of temperature that a log may be written in.
 *
 * <p>Conversions: NIST Special Publication 811 (2008 edition), appendix B.8, exact.
 */
public enum TemperatureUnit {
  CELSIUS("°C", "c", "°c", "degc", "deg c", "celsius", "ºc") {
    @Override
    public double toKelvin(double value) {
      return Celsius.toKelvins(value);
    }
  },
  FAHRENHEIT("°F", "f", "°f", "degf", "deg f", "fahrenheit", "ºf") {
    @Override
    public double toKelvin(double value) {
      return (value + 459.67) / 1.8;
    }
  },
  KELVIN("K", "k", "kelvin") {
    @Override
    public double toKelvin(double value) {
      return value;
    }
  };

  private final String symbol;
  private final Set<String> spellings;

  TemperatureUnit(String symbol, String... spellings) {
    this.symbol = symbol;
    this.spellings = Set.of(spellings);
  }

  /** The unit as it is printed. */
  public String symbol() {
    return symbol;
  }

  /**
   * @param value in this unit
   * @return [K]
   */
  public abstract double toKelvin(double value);

  /** Finds the unit that a person wrote, in any case. */
  public static Optional<TemperatureUnit> of(String written) {
    if (written.isEmpty()) {
      return Optional.empty();
    }
    String plain = written.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(unit -> unit.spellings.contains(plain)).findFirst();
  }
}
