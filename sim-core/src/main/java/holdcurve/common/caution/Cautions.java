package holdcurve.common.caution;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The one source of all cautions that have to do with fuel. */
public final class Cautions {
  private static final class Shipped {
    private static final Map<String, String> TEXTS = load();
  }

  private Cautions() {}

  /**
   * @param id such as {@code cold-lamp}
   * @throws IllegalArgumentException if there is none
   */
  public static String text(String id) {
    String text = Shipped.TEXTS.get(id);
    if (text == null) {
      throw new IllegalArgumentException("there is no caution '" + id + "'");
    }
    return text;
  }

  /** Every id, in the order of the file. */
  static List<String> ids() {
    return List.copyOf(Shipped.TEXTS.keySet());
  }

  /** Several, one sentence after the other. */
  public static String of(Caution... cautions) {
    return String.join(" ", texts(cautions));
  }

  public static List<String> texts(Caution... cautions) {
    return Arrays.stream(cautions).map(Caution::text).toList();
  }

  /** What holds for all work on a fuel circuit: stands in every output, whatever the verdict. */
  public static List<String> general() {
    return texts(Caution.PETROL, Caution.RELIEVE, Caution.BRIDGED_PUMP, Caution.LOCAL_CODES);
  }

  private static Map<String, String> load() {
    try (InputStream in = Cautions.class.getResourceAsStream("cautions.json")) {
      Map<String, String> texts = new LinkedHashMap<>();
      for (JsonNode caution : new ObjectMapper().readTree(in).get("cautions")) {
        texts.put(caution.get("id").asText(), caution.get("text").asText());
      }
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
