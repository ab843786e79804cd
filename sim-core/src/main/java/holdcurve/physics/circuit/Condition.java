package holdcurve.physics.circuit;

import java.util.ArrayList;
import java.util.List;

/**
 * The state of repair of a circuit: its parts as they are now, and the leaks that are open.
 *
 * @param circuit parts, with worn or changed values
 * @param leaks extra passages
 */
public record Condition(Circuit circuit, List<LeakPath> leaks) {
  public Condition {
    leaks = List.copyOf(leaks);
  }

  /** A circuit with no leak beyond the healthy weep of its seats. */
  public static Condition sound(Circuit circuit) {
    return new Condition(circuit, List.of());
  }

  /** A copy with one more leak. */
  public Condition with(LeakPath leak) {
    List<LeakPath> more = new ArrayList<>(leaks);
    more.add(leak);
    return new Condition(circuit, more);
  }

  /** A copy in which one property of one part has another value [SI]. */
  public Condition with(String part, Property property, double value) {
    return new Condition(circuit.with(part, property, value), leaks);
  }
}
