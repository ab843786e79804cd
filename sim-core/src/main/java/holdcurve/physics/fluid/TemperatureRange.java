package holdcurve.physics.fluid;

import holdcurve.common.number.Celsius;
import java.util.Locale;

/**
 * An interval of temperature, both ends included.
 *
 * @param low [K]
 * @param high [K]
 */
public record TemperatureRange(double low, double high) {
  public TemperatureRange {
    if (!(low > 0 && high > low)) {
      throw new IllegalArgumentException("no temperature range: " + low + " to " + high + " K");
    }
  }

  /** A range given in degrees Celsius. */
  public static TemperatureRange ofCelsius(double low, double high) {
    return new TemperatureRange(Celsius.toKelvins(low), Celsius.toKelvins(high));
  }

  public boolean contains(double temperature) {
    return temperature >= low && temperature <= high;
  }

  /**
   * Returns the temperature unchanged if it lies in the range.
   *
   * @param temperature [K]
   * @param fluid named in the message
   * @throws IllegalArgumentException outside the range
   */
  public double require(double temperature, String fluid) {
    if (contains(temperature)) {
      return temperature;
    }
    throw new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "temperature %.2f K (%.2f °C) is outside %.2f to %.2f K (%.0f to %.0f °C), for which"
                + " the properties of %s are known",
            temperature,
            Celsius.of(temperature),
            low,
            high,
            Celsius.of(low),
            Celsius.of(high),
            fluid));
  }
}
