package holdcurve.physics.circuit;

import holdcurve.physics.flow.FlowLaw;
import java.util.Objects;

/**
 * An extra passage that a fault opens between two connection points.
 *
 * @param from connection point the fuel leaves
 * @param to connection point or boundary it goes to, such as {@link Circuit#AIR}
 * @param law flow against pressure difference
 */
public record LeakPath(String from, String to, FlowLaw law) {
  public LeakPath {
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    Objects.requireNonNull(law);
  }
}
