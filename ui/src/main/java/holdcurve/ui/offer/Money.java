package holdcurve.ui.offer;

import java.util.Locale;

/** Prices as a person writes them. */
public final class Money {
  private static final double WHOLE_FROM = 100;

  private Money() {}

  /** Whole numbers from a hundred on, hundredths below where there are any. */
  public static String number(double value) {
    boolean whole = value >= WHOLE_FROM || value == Math.rint(value);
    return String.format(Locale.ROOT, whole ? "%.0f" : "%.2f", value);
  }

  /**
   * @param currency may be empty
   */
  public static String text(double value, String currency) {
    return (number(value) + " " + currency).strip();
  }
}
