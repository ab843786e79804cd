package holdcurve.common.number;

/** Degrees Celsius, as people state temperatures; the program works in kelvins. */
public final class Celsius {
  /** 0 °C by definition [K]. */
  public static final double ZERO = 273.15;

  private Celsius() {}

  /** From kelvins [°C]. */
  public static double of(double kelvins) {
    return kelvins - ZERO;
  }

  /** To kelvins [K]. */
  public static double toKelvins(double celsius) {
    return celsius + ZERO;
  }
}
