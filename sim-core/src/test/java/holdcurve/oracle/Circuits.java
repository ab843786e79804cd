package holdcurve.oracle;

import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import java.nio.file.Path;
import java.util.Set;

/** The invented circuits that tests share. */
public final class Circuits {
  /** Six injectors on a ring line, one hose on the feed side and one on the return side. */
  public static final Circuit SIX_CYLINDER =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));

  /** Its hoses that take a clamp. */
  public static final Set<String> CLAMPABLE = Set.of("feed-hose", "return-hose");

  private Circuits() {}

  /** A copy in which no seat lets anything past. */
  public static Circuit withoutWeeps(Circuit circuit) {
    return circuit.map(part -> withAll(part, "weep", 0));
  }

  /** A copy in which hoses stretch at once and never afterwards. */
  public static Circuit withoutCreep(Circuit circuit) {
    return circuit.map(part -> withAll(withAll(part, "quick_creep", 0), "slow_creep", 0));
  }

  private static Part withAll(Part part, String stem, double value) {
    Part changed = part;
    for (Property property : part.kind().properties()) {
      if (property.stem().equals(stem)) {
        changed = changed.with(property, value);
      }
    }
    return changed;
  }
}
