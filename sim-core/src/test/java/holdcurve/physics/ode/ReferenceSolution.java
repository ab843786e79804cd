package holdcurve.physics.ode;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Reads reference data from the test resources. */
final class ReferenceSolution {
  private ReferenceSolution() {}

  static JsonNode read(String file) {
    try (InputStream in = ReferenceSolution.class.getResourceAsStream("/reference/" + file)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** A list of numbers, or of numbers written as text. */
  static double[] doubles(JsonNode list) {
    double[] values = new double[list.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = Double.parseDouble(list.get(i).asText());
    }
    return values;
  }

  static double[][] table(JsonNode rows) {
    double[][] table = new double[rows.size()][];
    for (int i = 0; i < table.length; i++) {
      table[i] = doubles(rows.get(i));
    }
    return table;
  }
}
