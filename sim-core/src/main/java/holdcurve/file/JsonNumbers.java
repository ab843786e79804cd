package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.common.number.Interval;
import holdcurve.physics.circuit.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** How results are written as JSON. */
final class JsonNumbers {
  private JsonNumbers() {}

  /** Four significant digits: more than any result deserves, and no binary tails. */
  static double rounded(double value) {
    return Double.isFinite(value) && value != 0
        ? new BigDecimal(value).round(new MathContext(4)).doubleValue()
        : value;
  }

  /**
   * @param values [SI], written in {@code unit}
   */
  static void column(ArrayNode array, double[] values, Unit unit) {
    for (double value : values) {
      array.add(rounded(unit.fromSi(value)));
    }
  }

  /** A value with its 90 % range [SI], written in {@code unit}. */
  static void interval(ObjectNode node, Interval value, Unit unit) {
    node.put("low_5_percent", rounded(unit.fromSi(value.low())));
    node.put("middle", rounded(unit.fromSi(value.middle())));
    node.put("high_95_percent", rounded(unit.fromSi(value.high())));
  }

  /** A value that was stated, without the tails that its unit's conversion leaves. */
  static double stated(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }
}
