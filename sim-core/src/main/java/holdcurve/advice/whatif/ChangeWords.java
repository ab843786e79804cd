package holdcurve.advice.whatif;

import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Hose;
import java.util.ArrayList;
import java.util.List;

/** Reads a change as a person writes it: {@code part.property=value}, in the units of files. */
public final class ChangeWords {
  private static final String KIND = "kind";

  private final Circuit circuit;

  public ChangeWords(Circuit circuit) {
    this.circuit = circuit;
  }

  /**
   * @param words {@code part.property=value}, or {@code hose.kind=braided}
   * @throws InputException if there is no such part or property, or the value can't be used
   */
  public Change set(String words) {
    String[] sides = words.split("=", 2);
    int dot = sides[0].lastIndexOf('.');
    if (sides.length < 2 || dot < 1) {
      throw bad(words, "that is no change of a property", "write it as feed-hose.length_m=1.2");
    }
    Part part = part(words, sides[0].substring(0, dot));
    String name = sides[0].substring(dot + 1);
    if (part.kind() == Hose.KIND && name.equals(KIND)) {
      return Changes.hose(part, kind(words, sides[1]));
    }
    Property property = property(words, part, name);
    return Changes.set(part, property, value(words, property, sides[1]));
  }

  /**
   * @param id of a part
   * @throws InputException if there is none
   */
  public Change replace(String id) {
    return Changes.replace(part(id, id));
  }

  private Part part(String words, String id) {
    return circuit.parts().stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                bad(
                    words,
                    "there is no part '" + id + "' in this circuit",
                    "use one of " + list(circuit.parts().stream().map(Part::id).toList())));
  }

  private static HoseKind kind(String words, String id) {
    return HoseKind.byId(id)
        .orElseThrow(
            () -> bad(words, "unknown kind of hose '" + id + "'", "use " + list(HoseKind.ids())));
  }

  private static Property property(String words, Part part, String name) {
    List<String> known = new ArrayList<>();
    for (Property property : part.kind().properties()) {
      if (property.fileName().equals(name)) {
        return property;
      }
      known.add(property.fileName());
    }
    if (part.kind() == Hose.KIND) {
      known.add(KIND);
    }
    throw bad(
        words,
        "a " + part.kind().id() + " has no property '" + name + "'",
        known.isEmpty() ? "change another part" : "it has " + list(known));
  }

  private static double value(String words, Property property, String text) {
    Unit unit = property.unit();
    if (unit == Unit.FLAG && (text.equals("true") || text.equals("false"))) {
      return text.equals("true") ? 1 : 0;
    }
    try {
      double value = unit.toSi(Double.parseDouble(text));
      if (unit != Unit.FLAG && property.accepts(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // said below, with the range
    }
    throw bad(words, "'" + text + "' can't be used", range(property));
  }

  private static String range(Property property) {
    Unit unit = property.unit();
    return unit == Unit.FLAG
        ? "write true or false"
        : ("give a number from "
                + PlainNumbers.number(unit.fromSi(property.least()))
                + " to "
                + PlainNumbers.number(unit.fromSi(property.most()))
                + " "
                + unit.symbol())
            .strip();
  }

  private static String list(List<String> words) {
    return String.join(", ", words);
  }

  private static InputException bad(String words, String problem, String remedy) {
    return InputException.at("command line", words, problem, remedy);
  }
}
