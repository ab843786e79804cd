package holdcurve.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How many lines or entries a file holds, counted without the readers' own code. */
final class FuzzCount {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .build();

  private FuzzCount() {}

  /** Rows below the headings of a table, or entries of a JSON file's list. */
  static int entries(Path file, String text, String heading, String list) {
    return file.toString().endsWith(".json") ? inList(text, list) : rows(text, heading);
  }

  static int inList(String text, String list) {
    try {
      JsonNode root = MAPPER.readTree(text.startsWith("\ufeff") ? text.substring(1) : text);
      return root.path(list).size();
    } catch (JsonProcessingException e) {
      throw new AssertionError("read, but no JSON", e);
    }
  }

  private static int rows(String text, String heading) {
    List<String> lines =
        Arrays.stream(text.split("\r\n|\r|\n", -1)).filter(FuzzCount::holdsData).toList();
    for (int i = 0; i < lines.size(); i++) {
      if (names(lines.get(i), heading)) {
        return lines.size() - i - 1;
      }
    }
    throw new AssertionError("read, but there are no headings");
  }

  private static boolean holdsData(String line) {
    String plain = line.replaceAll("(?U)[\\s\\p{Cntrl};,|\"\\ufeff]", "");
    return !plain.isEmpty() && !plain.startsWith("#");
  }

  static boolean names(String line, String heading) {
    return line.matches("(?s).*[;\\t|,].*")
        && Arrays.stream(line.split("[;\\t|,]"))
            .map(cell -> cell.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}.]+", "_"))
            .anyMatch(cell -> cell.replaceAll("^_+|_+$", "").equals(heading));
  }
}
