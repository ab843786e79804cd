package holdcurve.file;

import java.util.List;
import java.util.Locale;

/** Small helpers for sentences. */
final class Words {
  private Words() {}

  /** "a, b and c". */
  static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** A number with at most four significant digits and no trailing zeros. */
  static String number(double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e6) {
      return String.format(Locale.ROOT, "%.0f", value);
    }
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }
}
