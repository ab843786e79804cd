package holdcurve.bench.flowsheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers in sentences. */
final class SheetNumbers {
  private SheetNumbers() {}

  /** At most two decimals, without trailing zeros. */
  static String few(double value) {
    BigDecimal rounded = new BigDecimal(value).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A share in percent without sign: whole, with a decimal below 10 %. */
  static String percent(double share) {
    double percent = 100 * Math.abs(share);
    return String.format(Locale.ROOT, percent < 9.95 ? "%.1f %%" : "%.0f %%", percent);
  }

  /** A share in percent with its sign. */
  static String signed(double share) {
    return (share < 0 ? "-" : "+") + percent(share);
  }

  /** "one", "two" ... up to twelve. */
  static String count(int n) {
    String[] words = {
      "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
      "eleven", "twelve"
    };
    return n < words.length ? words[n] : Integer.toString(n);
  }
}
