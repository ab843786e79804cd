package holdcurve.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.circuit.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** How results are written as JSON. */
final class JsonNumbers {
  private static final ObjectMapper MAPPER = new ObjectMapper();

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

  static String print(ObjectNode root) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
