package holdcurve.whatif;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as a person writes them. */
public final class Plain {
  private Plain() {}

  /** Four significant digits at most, no trailing zeros. */
  public static String number(double value) {
    return value == 0
        ? "0"
        : new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
