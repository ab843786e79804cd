package holdcurve.physics.circuit;

import holdcurve.common.number.Celsius;

/**
 * The units that files and screens use. Inside the program every value is SI; conversion happens
 * only where a file is read or written and where a number is shown.
 */
public enum Unit {
  NONE("", "", 1, 0),
  /** A yes/no property: true is 1, false is 0. */
  FLAG("", "", 1, 0),
  METRE("m", "m", 1, 0),
  MILLIMETRE("mm", "mm", 1e-3, 0),
  BAR("bar", "bar", 1e5, 0),
  GIGAPASCAL("GPa", "GPa", 1e9, 0),
  KILOPASCAL("kPa", "kPa", 1e3, 0),
  MILLILITRE("mL", "mL", 1e-6, 0),
  MILLILITRE_PER_MINUTE("mL_min", "mL/min", 1e-6 / 60, 0),
  LITRE_PER_MINUTE("L_min", "L/min", 1e-3 / 60, 0),
  LITRE_PER_MINUTE_BAR("L_min_bar", "L/min per bar", 1e-8 / 60, 0),
  MILLILITRE_PER_BAR_METRE("mL_bar_m", "mL/bar per m", 1e-11, 0),
  SECOND("s", "s", 1, 0),
  PERCENT("percent", "%", 0.01, 0),
  DENSITY("kg_m3", "kg/m³", 1, 0),
  CELSIUS("C", "°C", 1, Celsius.ZERO);

  private final String suffix;
  private final String symbol;
  private final double factor;
  private final double offset;

  Unit(String suffix, String symbol, double factor, double offset) {
    this.suffix = suffix;
    this.symbol = symbol;
    this.factor = factor;
    this.offset = offset;
  }

  /** How a property name in a file ends, such as {@code mL_min}; empty for a pure number. */
  public String suffix() {
    return suffix;
  }

  /** How the unit is written for a reader, such as {@code mL/min}. */
  public String symbol() {
    return symbol;
  }

  /** Converts a value in this unit to SI. */
  public double toSi(double value) {
    return value * factor + offset;
  }

  /** Converts an SI value to this unit. */
  public double fromSi(double value) {
    return (value - offset) / factor;
  }
}
