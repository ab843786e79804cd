package holdcurve.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An entry that a person states in words of their own, such as on a command line. The reader of the
 * file it goes into checks it, and says what is wrong by those words.
 */
public final class StatedEntry {
  private final ObjectNode node = JsonFiles.object();
  private final Map<String, String> words = new HashMap<>();

  /**
   * States a value under its name in the file.
   *
   * @param option how it was stated, such as {@code --part}
   * @param valueOrNull text, number, flag or list of texts; null for not stated
   */
  public StatedEntry put(String name, String option, Object valueOrNull) {
    return put(name, option, String.valueOf(valueOrNull), valueOrNull);
  }

  /**
   * Likewise.
   *
   * @param written the value as the person wrote it
   */
  public StatedEntry put(String name, String option, String written, Object valueOrNull) {
    if (valueOrNull != null) {
      node.set(name, JsonFiles.node(valueOrNull));
      words.put(name, (option + " " + written).strip());
    }
    return this;
  }

  ObjectNode node() {
    return node;
  }

  /**
   * How a value was stated; empty if it wasn't.
   *
   * @param path inside the entry, such as {@code clamped[1]}
   */
  Optional<String> words(String path) {
    return Optional.ofNullable(words.get(path.split("[.\\[]", 2)[0]));
  }

  /**
   * A file that this entry was put into.
   *
   * @param path where the entry now stands in it
   */
  JsonPlace in(JsonPlace root, String path) {
    return new JsonPlace(
        root.file(), root.path(), root.node(), root.lines().with(new JsonLines.Stated(path, this)));
  }
}
