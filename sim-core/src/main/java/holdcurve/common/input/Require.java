package holdcurve.common.input;

/**
 * Argument checks for programmers' mistakes. Each returns the value it was given, so that a check
 * can stand where the value is used, and throws an {@link IllegalArgumentException} naming the
 * quantity, its unit, the value found and the limit.
 */
public final class Require {
  private Require() {}

  /** A finite value above zero. */
  public static double positive(double value, String quantity, String unit) {
    return test(value > 0, value, quantity, unit, "above 0");
  }

  /** A finite value of zero or more. */
  public static double notNegative(double value, String quantity, String unit) {
    return test(value >= 0, value, quantity, unit, "0 or more");
  }

  /** Any finite value. */
  public static double finite(double value, String quantity, String unit) {
    return test(true, value, quantity, unit, "a finite number");
  }

  /** A value from {@code low} to {@code high}, both included. */
  public static double within(double value, double low, double high, String quantity, String unit) {
    if (value >= low && value <= high) {
      return value;
    }
    return test(false, value, quantity, unit, low + " to " + high);
  }

  private static double test(
      boolean good, double value, String quantity, String unit, String wanted) {
    if (good && Double.isFinite(value)) {
      return value;
    }
    throw new IllegalArgumentException(
        quantity + " is " + value + " [" + unit + "] but must be " + wanted);
  }
}
