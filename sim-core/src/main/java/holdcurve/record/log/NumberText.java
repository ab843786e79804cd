package holdcurve.record.log;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text: no more digits than mean something, no exponent, no "-0". */
final class NumberText {
  private NumberText() {}

  /** At least {@code least} and at most {@code most} decimals. */
  static String between(int least, int most, double value) {
    BigDecimal rounded = new BigDecimal(value).setScale(most, RoundingMode.HALF_EVEN);
    BigDecimal bare = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return bare.setScale(Math.max(least, bare.scale())).toPlainString();
  }

  /** At most two decimals. */
  static String few(double value) {
    return between(0, 2, value);
  }
}
