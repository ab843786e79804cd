package holdcurve.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers the creep of hose walls: one row for each relaxation time at each node. */
final class HoseWalls {
  private final List<NetworkLayout.CreepRow> rows = new ArrayList<>();

  /**
   * @param firstRow first row that is free
   */
  HoseWalls(List<NetworkBuilder.Creep> creeps, NodePlacement placement, int firstRow) {
    Map<Node, Map<Double, Map<String, Double>>> walls = new LinkedHashMap<>();
    for (NetworkBuilder.Creep creep : creeps) {
      Node node = placement.node(creep.point(), "a hose");
      if (!node.boundary() && creep.compliance() > 0) {
        walls
            .computeIfAbsent(node, key -> new LinkedHashMap<>())
            .computeIfAbsent(creep.relaxationTime(), key -> new LinkedHashMap<>())
            .merge(creep.point(), creep.compliance(), Double::sum);
      }
    }
    walls.forEach(
        (node, branches) ->
            branches.forEach((time, shares) -> addRow(node, firstRow, time, shares)));
  }

  private void addRow(Node node, int firstRow, double time, Map<String, Double> shares) {
    double compliance = 0;
    for (double share : shares.values()) {
      compliance += share;
    }
    rows.add(new NetworkLayout.CreepRow(node, firstRow + rows.size(), time, compliance, shares));
  }

  /** The rows, one after another from the first. */
  List<NetworkLayout.CreepRow> rows() {
    return rows;
  }

  /** The equations of the rows. */
  List<Element> elements() {
    List<Element> elements = new ArrayList<>();
    for (NetworkLayout.CreepRow wall : rows) {
      elements.add(
          new CreepElement(
              "hose stretch at " + wall.node().name(),
              wall.node(),
              wall.row(),
              wall.compliance(),
              wall.relaxationTime()));
    }
    return elements;
  }
}
