package holdcurve.physics.circuit;

import holdcurve.physics.fluid.Fluid;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.UnaryOperator;

/**
 * A fuel circuit: parts joined at named connection points, filled with one fluid. Immutable.
 *
 * @param title what the owner calls it
 * @param fluid what it is filled with
 * @param parts parts, upstream first where that has a meaning
 */
public record Circuit(String title, Fluid fluid, List<Part> parts) {
  /** The surroundings: a leak to here is a leak to the outside. */
  public static final String AIR = "air";

  /** The intake manifold, where injectors end. */
  public static final String MANIFOLD = "manifold";

  public Circuit {
    parts = List.copyOf(parts);
  }

  /** All parts of a kind, in circuit order. */
  public List<Part> partsOf(PartKind kind) {
    return parts.stream().filter(part -> part.kind() == kind).toList();
  }

  /**
   * @throws NoSuchElementException if there is none
   */
  public Part part(String id) {
    return parts.stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("no part '" + id + "' in " + title));
  }

  /** Every connection point that a part names, boundaries included, in order of first mention. */
  public List<String> points() {
    return parts.stream()
        .flatMap(part -> List.of(part.from(), part.to()).stream())
        .distinct()
        .toList();
  }

  /** Whether a name is a place with a fixed pressure: surroundings, manifold or a tank. */
  public boolean isBoundary(String point) {
    return point.equals(AIR)
        || point.equals(MANIFOLD)
        || parts.stream()
            .anyMatch(part -> part.kind().ports() == Ports.PLACE && part.id().equals(point));
  }

  /** A copy in which every part has gone through {@code change}. */
  public Circuit map(UnaryOperator<Part> change) {
    List<Part> changed = new ArrayList<>(parts.size());
    for (Part part : parts) {
      changed.add(change.apply(part));
    }
    return new Circuit(title, fluid, changed);
  }

  /** A copy in which one property of one part has another value [SI]. */
  public Circuit with(String id, Property property, double value) {
    part(id);
    return map(part -> part.id().equals(id) ? part.with(property, value) : part);
  }
}
