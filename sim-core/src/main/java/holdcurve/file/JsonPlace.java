package holdcurve.file;

import com.fasterxml.jackson.databind.JsonNode;
import holdcurve.check.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A value inside a JSON file that knows where it stands, so that whatever is wrong with it can be
 * said with file and place.
 *
 * @param file the file as the user named it
 * @param path such as {@code parts[3].length_m}; empty for the whole file
 * @param node the value
 */
record JsonPlace(String file, String path, JsonNode node) {

  InputException bad(String problem, String remedy) {
    return InputException.at(file, path, problem, remedy);
  }

  private JsonPlace step(String name, JsonNode value) {
    return new JsonPlace(file, path.isEmpty() ? name : path + "." + name, value);
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
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!known.contains(name)) {
                throw step(name, node.get(name))
                    .bad(
                        "unknown entry",
                        "known here: " + Words.list(known.stream().sorted().toList()));
              }
            });
  }

  List<JsonPlace> items(String remedy) {
    if (!node.isArray()) {
      throw bad("found " + shown() + " where a list [ ] belongs", remedy);
    }
    List<JsonPlace> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      items.add(new JsonPlace(file, path + "[" + i + "]", node.get(i)));
    }
    return items;
  }

  String text(String remedy) {
    if (!node.isTextual() || node.textValue().isBlank()) {
      throw bad("found " + shown() + " where a text belongs", remedy);
    }
    return node.textValue().strip();
  }

  double number(String remedy) {
    if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
      throw bad("found " + shown() + " where a number belongs", remedy);
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
    String text = node.toString();
    return text.length() > 40 ? text.substring(0, 37) + "..." : text;
  }
}
