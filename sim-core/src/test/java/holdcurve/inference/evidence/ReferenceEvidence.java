package holdcurve.inference.evidence;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Reads the published reference values among the test resources. */
public final class ReferenceEvidence {
  private ReferenceEvidence() {}

  /** A JSON file. */
  public static JsonNode json(String name) {
    try (InputStream in = open(name)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lines of a CSV file below its heading, cut at commas. */
  static String[][] table(String name) {
    try (InputStream in = open(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(","))
          .toArray(String[][]::new);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double[] numbers(JsonNode array) {
    double[] out = new double[array.size()];
    Arrays.setAll(out, i -> array.get(i).asDouble());
    return out;
  }

  private static InputStream open(String name) throws IOException {
    InputStream in = ReferenceEvidence.class.getResourceAsStream("/reference/" + name);
    if (in == null) {
      throw new IOException("no test resource reference/" + name);
    }
    return in;
  }
}
