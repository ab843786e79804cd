package holdcurve.physics.network;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Remembers what parts brought. The holds of a job differ in clamps and leaks, but share nearly all
 * parts, and asking a part is a good deal of what a network costs. Not thread-safe.
 */
final class PartMemory {
  /** Parts come and go with every change of a size. */
  private static final int MOST = 512;

  private final Map<Part, List<NetworkBuilder>> brought = new IdentityHashMap<>();

  /** What one part brings. */
  NetworkBuilder brought(Circuit circuit, Part part, Operation operation) {
    if (brought.size() > MOST) {
      brought.clear();
    }
    List<NetworkBuilder> known = brought.computeIfAbsent(part, p -> new ArrayList<>(2));
    for (NetworkBuilder one : known) {
      if (one.fluid() == circuit.fluid()
          && one.operation().isLikeButForClamps(operation)
          && one.operation().clampsLike(operation, part.id())) {
        return one;
      }
    }
    NetworkBuilder fresh = Contributions.of(circuit, part, operation);
    known.add(fresh);
    return fresh;
  }
}
