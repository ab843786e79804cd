package holdcurve.advice.whatif;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as a person writes them. */
public final class PlainNumbers {
  private PlainNumbers() {}

  /** Four significant digits at most, no trailing zeros. */
  public static String number(double value) {
    return value == 0
        ? "0"
        : new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
