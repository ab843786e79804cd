package holdcurve.inference.prior;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * One section of the data file {@code priors.json} beside this class, which holds all that is
 * believed before any reading, each figure with its source.
 */
public final class PriorFile {
  private static final JsonNode ROOT = read();

  private final JsonNode section;

  private PriorFile(JsonNode section) {
    this.section = section;
  }

  private static JsonNode read() {
    try (InputStream in = PriorFile.class.getResourceAsStream("priors.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * @param name such as {@code resting}
   */
  public static PriorFile section(String name) {
    return new PriorFile(ROOT.required(name));
  }

  /** A figure, in the unit that the file states beside it. */
  public double value(String name) {
    return section.required(name).required("value").asDouble();
  }

  JsonNode node() {
    return section;
  }
}
