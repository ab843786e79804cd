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
import holdcurve.check.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads JSON files of a stated format, with limits on size and depth. */
final class JsonFiles {
  private static final long MOST_BYTES = 8L << 20;
  private static final int MOST_DEPTH = 40;

  private static final ObjectMapper MAPPER = mapper();

  private JsonFiles() {}

  private static ObjectMapper mapper() {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
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
    return checked(parse(file), kind, version);
  }

  /**
   * Like {@link #read(Path, String, int)}, from text that is no file.
   *
   * @param name where it comes from, for messages
   */
  static JsonPlace read(String name, String text, String kind, int version) {
    try {
      return checked(new JsonPlace(name, "", MAPPER.readTree(text)), kind, version);
    } catch (JsonProcessingException e) {
      throw InputException.because(
          name, place(e), "not valid JSON: " + plain(e), "correct it there", e);
    }
  }

  /**
   * A value that stood in a file in another form.
   *
   * @param path where it stood
   */
  static JsonPlace part(String file, String path, String text) {
    try {
      return new JsonPlace(file, path, MAPPER.readTree(text));
    } catch (JsonProcessingException e) {
      throw InputException.because(
          file, path, "not valid JSON: " + plain(e), "correct it there", e);
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

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  private static JsonPlace checked(JsonPlace root, String kind, int version) {
    root.requireObject("start the file with { \"format\": \"" + kind + "/" + version + "\", ...");
    checkFormat(root, kind, version);
    return root;
  }

  private static JsonPlace parse(Path file) {
    String name = file.toString();
    try {
      if (Files.isDirectory(file)) {
        throw InputException.at(name, "", "this is a folder", "name the file inside it");
      }
      if (Files.size(file) > MOST_BYTES) {
        throw InputException.at(
            name, "", "the file is larger than 8 MB", "check that it is the right file");
      }
      JsonNode node = MAPPER.readTree(file.toFile());
      if (node == null || node.isMissingNode()) {
        throw InputException.at(name, "", "the file is empty", "restore it or write it anew");
      }
      return new JsonPlace(name, "", node);
    } catch (NoSuchFileException e) {
      throw InputException.because(
          name, "", "there is no such file", "check the name and the folder", e);
    } catch (JsonProcessingException e) {
      throw InputException.because(
          name, place(e), "not valid JSON: " + plain(e), "correct it there", e);
    } catch (IOException e) {
      throw InputException.because(name, "", "the file can't be read", "check its permissions", e);
    }
  }

  private static String place(JsonProcessingException e) {
    var location = e.getLocation();
    return location == null
        ? ""
        : "line " + location.getLineNr() + ", column " + location.getColumnNr();
  }

  private static String plain(JsonProcessingException e) {
    String first = e.getOriginalMessage().lines().findFirst().orElse("unexpected text");
    return first.replaceAll("\\s*\\(.*$", "").replaceAll("[.;:\\s]+$", "");
  }

  private static void checkFormat(JsonPlace root, String kind, int version) {
    String remedy = "write \"format\": \"" + kind + "/" + version + "\"";
    JsonPlace place = root.get("format", remedy);
    String format = place.text(remedy);
    if (format.equals(kind + "/" + version)) {
      return;
    }
    if (format.matches(kind + "/[0-9]{1,6}")) {
      throw place.bad(
          "this file is of the newer format " + format,
          "open it with a newer Holdcurve; this one understands up to " + kind + "/" + version);
    }
    throw place.bad("'" + format + "' is another format", remedy);
  }
}
