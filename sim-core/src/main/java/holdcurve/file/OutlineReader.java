package holdcurve.file;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.part.CircuitOutline;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.RigidPipe;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads the {@code outline} of a circuit file: a circuit in a few words instead of its parts. */
final class OutlineReader {
  static final Set<String> ENTRIES =
      Set.of(
          "cylinders", "pipe_length_m", "pipe_bore_mm", "set_bar", "damper", "cold_start_injector");

  private OutlineReader() {}

  static List<Part> parts(JsonPlace outline) {
    outline.requireObject("write { \"cylinders\": 6 }");
    outline.allow(ENTRIES);
    JsonPlace cylinders = outline.get("cylinders", "say how many cylinders the engine has");
    double count = PartProperties.number(cylinders, Injector.COUNT);
    if (count != Math.rint(count)) {
      throw cylinders.bad(cylinders.shown() + " is no whole number", "give a whole number");
    }
    return new CircuitOutline(
            (int) count,
            value(outline, "pipe_length_m", RigidPipe.LENGTH),
            value(outline, "pipe_bore_mm", RigidPipe.BORE),
            value(outline, "set_bar", Regulator.SET),
            flag(outline, "damper"),
            flag(outline, "cold_start_injector"))
        .parts();
  }

  private static OptionalDouble value(JsonPlace outline, String name, Property property) {
    return outline
        .find(name)
        .map(place -> OptionalDouble.of(PartProperties.number(place, property)))
        .orElseGet(OptionalDouble::empty);
  }

  private static boolean flag(JsonPlace outline, String name) {
    return outline.find(name).map(place -> place.flag("write true or false")).orElse(false);
  }
}
