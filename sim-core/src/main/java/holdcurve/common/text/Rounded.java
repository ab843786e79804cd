package holdcurve.common.text;

/** Numbers rounded to be shown, and never minus nothing. */
public final class Rounded {
  private Rounded() {}

  /** To whole ones. */
  public static double whole(double value) {
    return Math.rint(value) + 0.0;
  }

  /** To hundredths. */
  public static double hundredths(double value) {
    return Math.rint(100 * value) / 100 + 0.0;
  }
}
