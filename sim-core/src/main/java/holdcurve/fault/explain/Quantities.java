package holdcurve.fault.explain;

import holdcurve.physics.circuit.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as a person writes them: two significant digits and the unit. */
final class Quantities {
  private static final MathContext TWO_DIGITS = new MathContext(2);

  private Quantities() {}

  /**
   * @param si finite value [SI]
   */
  static String number(double si, Unit unit) {
    BigDecimal rounded = new BigDecimal(unit.fromSi(si)).round(TWO_DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  static String withUnit(double si, Unit unit) {
    return (number(si, unit) + " " + unit.symbol()).strip();
  }
}
