package holdcurve.file;

import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.TextNode;
import holdcurve.common.input.InputException;
import holdcurve.record.log.SheetTable;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Named values of a JSON object or of a line of a table, each knowing where it stands. Names are
 * compared in lower case.
 *
 * @param file the file as the user named it
 * @param place of the whole, for messages
 * @param fields name in lower case → value
 */
record SheetFields(String file, String place, Map<String, JsonPlace> fields) {

  static SheetFields of(JsonPlace object) {
    Map<String, JsonPlace> fields = new LinkedHashMap<>();
    object
        .node()
        .fieldNames()
        .forEachRemaining(
            name -> object.find(name).ifPresent(value -> addOnce(fields, name, value)));
    return new SheetFields(object.file(), object.path(), fields);
  }

  private static void addOnce(Map<String, JsonPlace> fields, String name, JsonPlace value) {
    if (fields.put(name.toLowerCase(Locale.ROOT), value) != null) {
      throw value.bad("'" + name + "' stands there a second time", "keep one of the two");
    }
  }

  static SheetFields of(String file, String place, Map<String, SheetTable.Cell> cells) {
    Map<String, JsonPlace> fields = new LinkedHashMap<>();
    cells.forEach((name, cell) -> fields.put(name, place(file, cell)));
    return new SheetFields(file, place, fields);
  }

  private static JsonPlace place(String file, SheetTable.Cell cell) {
    OptionalDouble number = cell.number();
    if (number.isEmpty()) {
      return new JsonPlace(file, cell.place(), TextNode.valueOf(cell.text()), JsonLines.NONE);
    }
    double value = number.getAsDouble();
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e6;
    return new JsonPlace(
        file,
        cell.place(),
        whole ? IntNode.valueOf((int) value) : DoubleNode.valueOf(value),
        JsonLines.NONE);
  }

  /** All of it, for messages. */
  JsonPlace whole() {
    return new JsonPlace(file, place, NullNode.getInstance(), JsonLines.NONE);
  }

  Optional<JsonPlace> find(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  JsonPlace get(String name, String remedy) {
    return find(name)
        .orElseThrow(() -> InputException.at(file, place, "'" + name + "' is missing", remedy));
  }

  /** A number in a range, ends included, or the usual one where it isn't stated. */
  double number(String name, double least, double most, String unit, double usual) {
    return find(name).map(value -> value.number(least, most, unit)).orElse(usual);
  }

  /** Refuses any name that is neither listed nor of the form {@code also}. */
  void allow(Collection<String> known, Pattern also) {
    fields.forEach(
        (name, value) -> {
          if (!known.contains(name) && !also.matcher(name).matches()) {
            throw value.bad(
                "unknown entry '" + name + "'",
                "known here: " + Words.list(known.stream().sorted().toList()));
          }
        });
  }

  void allow(Set<String> known) {
    allow(known, NOTHING);
  }

  /** A text or a number as text. */
  String word(String name, String remedy) {
    JsonPlace value = get(name, remedy);
    return value.node().isNumber() ? value.node().asText() : value.text(remedy);
  }

  private static final Pattern NOTHING = Pattern.compile("(?!)");
}
