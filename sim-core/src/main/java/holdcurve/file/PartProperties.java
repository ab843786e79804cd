package holdcurve.file;

import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the typed properties of a part, whose names carry their unit. */
final class PartProperties {
  private static final Set<String> COMMON = Set.of("kind", "id", "notes");

  private PartProperties() {}

  static Map<Property, Double> read(JsonPlace part, PartKind kind) {
    Map<Property, Double> values = new LinkedHashMap<>();
    for (Iterator<String> names = part.node().fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!isStructure(name, kind)) {
        JsonPlace place = part.get(name, "give it a value or leave it out");
        Property property = byFileName(kind, name).orElseThrow(() -> unknown(place, kind, name));
        values.put(property, value(place, property));
      }
    }
    return values;
  }

  private static boolean isStructure(String name, PartKind kind) {
    return COMMON.contains(name)
        || (kind.ports() == Ports.ONE && name.equals("at"))
        || (kind.ports() == Ports.TWO && (name.equals("from") || name.equals("to")));
  }

  private static Optional<Property> byFileName(PartKind kind, String name) {
    return kind.properties().stream().filter(p -> p.fileName().equals(name)).findFirst();
  }

  private static double value(JsonPlace place, Property property) {
    if (property.unit() == Unit.FLAG) {
      return place.flag("write true or false") ? 1 : 0;
    }
    return number(place, property);
  }

  /** A number in the property's file unit, as SI. */
  static double number(JsonPlace place, Property property) {
    Unit unit = property.unit();
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    return unit.toSi(
        place.number(unit.fromSi(property.least()), unit.fromSi(property.most()), symbol));
  }

  private static InputException unknown(JsonPlace place, PartKind kind, String name) {
    for (Property property : kind.properties()) {
      if (name.equals(property.stem()) || name.startsWith(property.stem() + "_")) {
        return place.bad(
            "the unit of '" + property.stem() + "' is not understood",
            "write it in " + property.unit().symbol() + " as '" + property.fileName() + "'");
      }
    }
    List<String> known = new ArrayList<>();
    kind.properties().forEach(property -> known.add(property.fileName()));
    String has = known.isEmpty() ? "has no properties" : "has " + Words.list(known);
    return place.bad("unknown property", "a " + kind.id() + " " + has);
  }
}
