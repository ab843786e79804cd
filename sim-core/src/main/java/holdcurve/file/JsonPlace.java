package holdcurve.file;

import com.fasterxml.jackson.databind.JsonNode;
import holdcurve.common.input.InputErrors;
import holdcurve.common.input.InputException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A value inside a JSON file that knows where it stands, so that whatever is wrong with it can be
 * said with file and place.
 *
 * @param file the file as the user named it
 * @param path such as {@code parts[3].length_m}; empty for the whole file
 * @param node the value
 * @param lines in which line of the file it stands
 */
record JsonPlace(String file, String path, JsonNode node, JsonLines lines) {

  private static final int MOST_ITEMS = 2000;

  /** What steers a terminal; tabs and line ends may stand in notes. */
  private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}&&[^\\n\\t]]");

  InputException bad(String problem, String remedy) {
    Optional<String> words = lines.words(path);
    if (words.isPresent()) {
      return InputException.at("command line", words.get(), problem, remedy);
    }
    String line = lines.of(path);
    return InputException.at(file, line.isEmpty() ? path : line + ", " + path, problem, remedy);
  }

  private JsonPlace step(String name, JsonNode value) {
    return new JsonPlace(file, path.isEmpty() ? name : path + "." + name, value, lines);
  }

  Optional<JsonPlace> find(String name) {
    JsonNode value = node.get(name);
    return value == null || value.isNull() ? Optional.empty() : Optional.of(step(name, value));
  }

  JsonPlace get(String name, String remedy) {
    return find(name).orElseThrow(() -> bad("'" + name + "' is missing", remedy));
  }

  void requireObject(String remedy) {
    if (!node.isObject()) {
      throw bad("found " + shown() + " where an object { } belongs", remedy);
    }
  }

  /** Refuses any field that isn't one of {@code known}. */
  void allow(Set<String> known) {
    InputErrors troubles = new InputErrors();
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!known.contains(name)) {
                troubles.add(
                    step(name, node.get(name))
                        .bad(
                            "unknown entry",
                            "known here: " + Words.list(known.stream().sorted().toList())));
              }
            });
    troubles.refuse();
  }

  /** One entry of a list. */
  JsonPlace item(int index) {
    return new JsonPlace(file, path + "[" + index + "]", node.get(index), lines);
  }

  List<JsonPlace> items(String remedy) {
    if (!node.isArray()) {
      throw bad("found " + shown() + " where a list [ ] belongs", remedy);
    }
    if (node.size() > MOST_ITEMS) {
      throw bad(
          "the list has " + node.size() + " entries", "keep it to " + MOST_ITEMS + " at most");
    }
    List<JsonPlace> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      items.add(item(i));
    }
    return items;
  }

  String text(String remedy) {
    if (!node.isTextual() || node.textValue().isBlank()) {
      throw bad("found " + shown() + " where a text belongs", remedy);
    }
    return UNSEEN.matcher(node.textValue()).replaceAll(" ").strip();
  }

  double number(String remedy) {
    if (!node.isNumber()) {
      throw bad("found " + shown() + " where a number belongs", remedy);
    }
    if (!Double.isFinite(node.doubleValue())) {
      throw bad("the number is too large to be meant", remedy);
    }
    return node.doubleValue();
  }

  /** A number that must lie in a range, ends included. */
  double number(double least, double most, String unit) {
    String range = "give a number from " + Words.number(least) + " to " + Words.number(most) + unit;
    double value = number(range);
    if (value < least || value > most) {
      throw bad(shown() + unit + " is out of range", range);
    }
    return value;
  }

  boolean flag(String remedy) {
    if (!node.isBoolean()) {
      throw bad("found " + shown() + " where true or false belongs", remedy);
    }
    return node.booleanValue();
  }

  /** The value as it stands in the file, shortened. */
  String shown() {
    double value = node.isNumber() ? node.doubleValue() : Double.NaN;
    String text =
        Math.abs(value) >= 1e-6 && Math.abs(value) < 1e16
            ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
            : node.toString();
    return text.length() > 40 ? text.substring(0, 37) + "..." : text;
  }
}
