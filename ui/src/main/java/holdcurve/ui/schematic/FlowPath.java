package holdcurve.ui.schematic;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Ways that fuel takes through the two-ended parts of a circuit. */
final class FlowPath {
  private final List<Part> lines;
  private List<Part> longest = List.of();

  private FlowPath(Circuit circuit) {
    lines = circuit.parts().stream().filter(part -> part.kind().ports() == Ports.TWO).toList();
  }

  /** The longest way from a boundary to a boundary that visits no place twice. */
  static List<Part> main(Circuit circuit) {
    FlowPath path = new FlowPath(circuit);
    for (Part part : path.lines) {
      if (circuit.isBoundary(part.from())) {
        path.extend(new ArrayList<>(List.of(part)), new HashSet<>(), circuit::isBoundary);
      }
    }
    if (path.longest.isEmpty() && !path.lines.isEmpty()) {
      return path.lines;
    }
    return path.longest;
  }

  /**
   * The longest way from {@code start} over parts not drawn yet, up to a place that is.
   *
   * @param used parts that are drawn
   * @param placed whether a point is drawn
   */
  static List<Part> branch(
      Circuit circuit, String start, Set<Part> used, Predicate<String> placed) {
    FlowPath path = new FlowPath(circuit);
    for (Part part : path.lines) {
      if (part.from().equals(start) && !used.contains(part)) {
        path.extend(
            new ArrayList<>(List.of(part)),
            new HashSet<>(Set.of(start)),
            point -> placed.test(point) || path.isEnd(point));
      }
    }
    return path.longest;
  }

  private boolean isEnd(String point) {
    return lines.stream().noneMatch(part -> part.from().equals(point));
  }

  private void extend(List<Part> way, Set<String> visited, Predicate<String> end) {
    String at = way.get(way.size() - 1).to();
    if (end.test(at)) {
      if (way.size() > longest.size()) {
        longest = List.copyOf(way);
      }
      return;
    }
    if (!visited.add(at)) {
      return;
    }
    for (Part next : lines) {
      if (next.from().equals(at)) {
        way.add(next);
        extend(way, visited, end);
        way.remove(way.size() - 1);
      }
    }
    visited.remove(at);
  }
}
