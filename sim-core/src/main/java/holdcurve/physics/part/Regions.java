package holdcurve.physics.part;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The pieces into which a circuit falls when every clamp is on and every valve shut: what no test
 * can divide further.
 *
 * @param pieces connection points of each piece, boundaries left out
 */
public record Regions(List<Set<String>> pieces) {
  private static final Set<PartKind> DIVIDING = Set.of(Pump.KIND, CheckValve.KIND, Regulator.KIND);

  public static Regions of(Circuit circuit) {
    List<Set<String>> pieces = new ArrayList<>();
    for (String point : circuit.points()) {
      if (!circuit.isBoundary(point) && pieces.stream().noneMatch(p -> p.contains(point))) {
        pieces.add(reach(circuit, point));
      }
    }
    return new Regions(pieces);
  }

  private static Set<String> reach(Circuit circuit, String start) {
    Set<String> reached = new LinkedHashSet<>(List.of(start));
    boolean grown = true;
    while (grown) {
      grown = false;
      for (Part part : circuit.parts()) {
        if (joins(part) && (reached.contains(part.from()) || reached.contains(part.to()))) {
          grown |= addInner(circuit, reached, part.from());
          grown |= addInner(circuit, reached, part.to());
        }
      }
    }
    return reached;
  }

  private static boolean addInner(Circuit circuit, Set<String> reached, String point) {
    return !circuit.isBoundary(point) && reached.add(point);
  }

  private static boolean joins(Part part) {
    boolean clampable = part.kind() == Hose.KIND && part.is(Hose.CLAMPABLE);
    return part.kind().ports() == Ports.TWO && !clampable && !DIVIDING.contains(part.kind());
  }

  /** The piece that a point lies in; empty for a boundary. */
  public Set<String> around(String point) {
    return pieces.stream().filter(piece -> piece.contains(point)).findFirst().orElse(Set.of());
  }

  /**
   * Parts of a circuit with a joint in a piece: whatever sits or ends there. The gauge is left out:
   * its tee is the tester's own joint.
   */
  public static List<String> joints(Circuit circuit, Set<String> piece) {
    return circuit.parts().stream()
        .filter(part -> part.kind() != Gauge.KIND)
        .filter(part -> piece.contains(part.from()) || piece.contains(part.to()))
        .map(Part::id)
        .toList();
  }
}
