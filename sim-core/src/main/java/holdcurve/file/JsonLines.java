package holdcurve.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;

/**
 * In which line of a JSON text a value stands. Looked up when it is asked for, since that is when
 * something is wrong.
 *
 * @param text empty where the values come from something else
 */
record JsonLines(String text) {
  static final JsonLines NONE = new JsonLines("");

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
