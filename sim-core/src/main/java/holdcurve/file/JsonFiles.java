package holdcurve.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.common.input.Cancellation;
import holdcurve.common.input.InputException;
import holdcurve.common.text.TextFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads JSON files of a stated format, with limits on size and depth. */
final class JsonFiles {
  static final int MOST_DEPTH = 40;
  private static final int MOST_MEGABYTES = 8;
  private static final String RIGHT_FILE = "check that it is the right file";
  private static final Pattern VERSION = Pattern.compile("(.*)/([0-9]{1,6})");

  private static final ObjectMapper MAPPER = mapper();

  private JsonFiles() {}

  private static ObjectMapper mapper() {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    mapper
        .getFactory()
        .setStreamReadConstraints(
            StreamReadConstraints.builder().maxNestingDepth(MOST_DEPTH).build());
    return mapper;
  }

  /**
   * Reads a file and checks its {@code format} entry.
   *
   * @param kind such as {@code holdcurve-job}
   * @param version newest version that is understood
   */
  static JsonPlace read(Path file, String kind, int version) {
    return read(file, kind, version, new ArrayList<>());
  }

  /**
   * Like {@link #read(Path, String, int)}.
   *
   * @param understood takes what is to be said about the form of the file
   */
  static JsonPlace read(Path file, String kind, int version, List<String> understood) {
    Cancellation.check();
    TextFile text = TextFile.read(file, MOST_MEGABYTES, RIGHT_FILE, RIGHT_FILE);
    if (!text.encoding().isEmpty()) {
      understood.add(text.said());
    }
    return read(text.name(), text.text(), kind, version);
  }

  /**
   * Like {@link #read(Path, String, int)}, from text that is no file.
   *
   * @param name where it comes from, for messages
   */
  static JsonPlace read(String name, String text, String kind, int version) {
    JsonPlace root = part(name, "", text, new JsonLines(text));
    if (root.node().isMissingNode()) {
      throw InputException.at(name, "", "the file is empty", "restore it or write it anew");
    }
    root.requireObject("start the file with { \"format\": \"" + kind + "/" + version + "\", ...");
    checkFormat(root, kind, version);
    return root;
  }

  /**
   * A value that stood in a file in another form.
   *
   * @param path where it stood
   */
  static JsonPlace part(String file, String path, String text) {
    return part(file, path, text, JsonLines.NONE);
  }

  private static JsonPlace part(String file, String path, String text, JsonLines lines) {
    try {
      return new JsonPlace(file, path, MAPPER.readTree(text), lines);
    } catch (JsonProcessingException e) {
      throw new JsonTrouble(file, text, e).exception();
    }
  }

  /** As people and other programs like to read it: one entry a line, a line end at the end. */
  static String print(JsonNode node) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  static JsonParser parser(String text) throws IOException {
    return MAPPER.getFactory().createParser(text);
  }

  /** A text, number, flag or list of texts as it stands in a file. */
  static JsonNode node(Object value) {
    return MAPPER.valueToTree(value);
  }

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  private static void checkFormat(JsonPlace root, String kind, int version) {
    String remedy = "write \"format\": \"" + kind + "/" + version + "\"";
    JsonPlace place = root.get("format", remedy);
    String format = place.text(remedy);
    if (format.equals(kind + "/" + version)) {
      return;
    }
    requireOlder(place, format, kind, version);
    throw format.matches("holdcurve-[a-z-]+/[0-9]{1,6}")
        ? place.bad(
            "this file is a " + format + ", not a " + kind + "/" + version, "name the right file")
        : place.bad("'" + format + "' is another format", remedy);
  }

  /** Refuses a version newer than is understood. */
  static void requireOlder(JsonPlace place, String format, String kind, int version) {
    Matcher named = VERSION.matcher(format);
    if (named.matches()
        && named.group(1).equals(kind)
        && Integer.parseInt(named.group(2)) > version) {
      throw place.bad(
          "this file is of the newer format " + format,
          "open it with a newer Holdcurve; this one understands up to " + kind + "/" + version);
    }
  }
}
