package holdcurve.model;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.model.NetworkAssembler.Detail;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which connection points share a node, and which row each node has. It depends on how the parts
 * are joined, not on their values, so it serves for any number of networks.
 *
 * @param parts whose ends were placed
 * @param open passages whose ends are one place
 * @param manifold pressure of the intake manifold [Pa gauge]
 * @param places connection point → node
 * @param inner nodes with a state
 * @param ledger boundaries
 * @param rows states so far
 */
record Placement(
    List<Part> parts,
    List<NetworkBuilder.Passage> open,
    double manifold,
    Map<String, Node> places,
    List<Node> inner,
    List<Node> ledger,
    int rows) {
  static Placement of(
      Circuit circuit, List<NetworkBuilder.Passage> passages, double manifold, Detail detail) {
    PointGroups groups = new PointGroups();
    groups.add(Circuit.AIR);
    groups.add(Circuit.MANIFOLD);
    circuit.points().forEach(groups::add);
    List<NetworkBuilder.Passage> open = open(passages, detail);
    open.forEach(passage -> groups.join(passage.from(), passage.to()));
    Map<String, Node> places = new HashMap<>();
    List<Node> inner = new ArrayList<>();
    List<Node> ledger = new ArrayList<>();
    int rows = 0;
    for (List<String> group : groups.groups().values()) {
      if (group.stream().noneMatch(circuit::isBoundary)) {
        Node node = Node.inner(group.get(0), rows++);
        inner.add(node);
        group.forEach(point -> places.put(point, node));
      }
    }
    for (List<String> group : groups.groups().values()) {
      for (String point : group) {
        if (circuit.isBoundary(point)) {
          double pressure = point.equals(Circuit.MANIFOLD) ? manifold : 0;
          Node node = Node.fixed(point, detail == Detail.LEDGER ? rows++ : -1, pressure);
          ledger.add(node);
          group.forEach(each -> places.put(each, node));
          break;
        }
      }
    }
    return new Placement(circuit.parts(), open, manifold, places, inner, ledger, rows);
  }

  private static List<NetworkBuilder.Passage> open(
      List<NetworkBuilder.Passage> passages, Detail detail) {
    return detail == Detail.LUMPED
        ? passages.stream().filter(NetworkBuilder.Passage::open).toList()
        : List.of();
  }

  /** Whether {@link #of} would give this same placement again. */
  boolean serves(
      Circuit circuit,
      List<NetworkBuilder.Passage> passages,
      double manifoldPressure,
      Detail detail) {
    return manifold == manifoldPressure
        && samePlaces(circuit.parts())
        && (detail != Detail.LUMPED || sameOpen(passages));
  }

  private boolean samePlaces(List<Part> others) {
    if (others.size() != parts.size()) {
      return false;
    }
    for (int i = 0; i < parts.size(); i++) {
      Part a = parts.get(i);
      Part b = others.get(i);
      if (a != b
          && !(a.kind() == b.kind()
              && a.id().equals(b.id())
              && a.from().equals(b.from())
              && a.to().equals(b.to()))) {
        return false;
      }
    }
    return true;
  }

  private boolean sameOpen(List<NetworkBuilder.Passage> passages) {
    int next = 0;
    for (NetworkBuilder.Passage passage : passages) {
      if (passage.open()) {
        if (next == open.size()
            || !passage.from().equals(open.get(next).from())
            || !passage.to().equals(open.get(next).to())) {
          return false;
        }
        next++;
      }
    }
    return next == open.size();
  }
}
