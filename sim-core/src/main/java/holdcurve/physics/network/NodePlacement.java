package holdcurve.physics.network;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.network.NetworkAssembler.Detail;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Decides which connection points share a node, and gives the nodes their rows. That depends on how
 * parts are joined, not on their values, so one placement serves any number of networks.
 */
final class NodePlacement {
  private final Circuit circuit;
  private final Operation operation;
  private final Detail detail;
  private final Map<String, Node> places = new HashMap<>();
  private final List<Node> inner = new ArrayList<>();
  private final List<Node> boundaries = new ArrayList<>();
  private int rows;

  NodePlacement(
      Circuit circuit,
      Operation operation,
      Detail detail,
      Set<String> kept,
      Iterable<NetworkBuilder.Passage> passages) {
    this.circuit = circuit;
    this.operation = operation;
    this.detail = detail;
    placeGroups(groups(passages, kept));
  }

  private PointGroups groups(Iterable<NetworkBuilder.Passage> passages, Set<String> kept) {
    PointGroups groups = new PointGroups();
    groups.add(Circuit.AIR);
    groups.add(Circuit.MANIFOLD);
    circuit.points().forEach(groups::add);
    if (detail == Detail.LUMPED) {
      for (NetworkBuilder.Passage passage : passages) {
        if (passage.open() && !kept.contains(passage.name())) {
          groups.join(passage.from(), passage.to());
        }
      }
    }
    return groups;
  }

  private void placeGroups(PointGroups groups) {
    for (List<String> group : groups.groups().values()) {
      if (group.stream().noneMatch(circuit::isBoundary)) {
        place(group, Node.inner(group.get(0), rows++), inner);
      }
    }
    for (List<String> group : groups.groups().values()) {
      group.stream()
          .filter(circuit::isBoundary)
          .findFirst()
          .ifPresent(point -> place(group, boundary(point), boundaries));
    }
  }

  private void place(List<String> group, Node node, List<Node> kept) {
    kept.add(node);
    group.forEach(point -> places.put(point, node));
  }

  private Node boundary(String point) {
    double pressure = point.equals(Circuit.MANIFOLD) ? operation.manifoldPressure() : 0;
    return Node.fixed(point, detail == Detail.LEDGER ? rows++ : -1, pressure);
  }

  /**
   * The node that a connection point lies on.
   *
   * @param what who names the point, for the message
   * @throws IllegalArgumentException if it isn't in the circuit
   */
  Node node(String point, String what) {
    Node node = places.get(point);
    if (node == null) {
      throw new IllegalArgumentException(
          what + " names the point '" + point + "', which is not in " + circuit.title());
    }
    return node;
  }

  /** Connection point → node or boundary. */
  Map<String, Node> places() {
    return places;
  }

  /** Nodes whose pressure is a state, by row. */
  List<Node> inner() {
    return inner;
  }

  /** Boundaries whose received volume is a state; none unless a ledger is kept. */
  List<Node> ledger() {
    return detail == Detail.LEDGER ? boundaries : List.of();
  }

  /** Rows given out so far. */
  int rows() {
    return rows;
  }
}
