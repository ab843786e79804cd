package holdcurve.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * In which line of a JSON text a value stands. Looked up when it is asked for, since that is when
 * something is wrong.
 *
 * @param text empty where the values come from something else
 * @param stated entries that stand in no text yet, since a person states them now
 */
record JsonLines(String text, List<Stated> stated) {
  static final JsonLines NONE = new JsonLines("");

  /**
   * An entry that was put into what was read.
   *
   * @param path where it now stands
   */
  record Stated(String path, StatedEntry entry) {
    Optional<String> words(String asked) {
      if (asked.equals(path)) {
        return path.isEmpty() ? Optional.empty() : Optional.of("");
      }
      return asked.startsWith(path)
          ? entry.words(asked.substring(path.length()).replaceFirst("^\\.", ""))
          : Optional.empty();
    }
  }

  JsonLines(String text) {
    this(text, List.of());
  }

  /** The same, and what a person states besides. */
  JsonLines with(Stated entry) {
    List<Stated> all = new ArrayList<>(stated);
    all.add(entry);
    return new JsonLines(text, all);
  }

  /** How a person stated what stands there; empty where it stood in the file. */
  Optional<String> words(String path) {
    return stated.stream().flatMap(one -> one.words(path).stream()).findFirst();
  }

  /** {@code line 8}, or nothing for the whole text and for what stands in no line. */
  String of(String path) {
    if (path.isEmpty() || text.isEmpty()) {
      return "";
    }
    try (JsonParser parser = JsonFiles.parser(text)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        JsonStreamContext at = parser.getParsingContext();
        boolean opens = token.isStructStart();
        if ((opens || token.isScalarValue()) && path(opens ? at.getParent() : at).equals(path)) {
          return "line " + parser.currentTokenLocation().getLineNr();
        }
      }
      return "";
    } catch (IOException e) {
      return "";
    }
  }

  private static String path(JsonStreamContext at) {
    if (at.inRoot()) {
      return "";
    }
    String before = path(at.getParent());
    if (at.inArray()) {
      return before + "[" + at.getCurrentIndex() + "]";
    }
    return before.isEmpty() ? at.getCurrentName() : before + "." + at.getCurrentName();
  }
}
