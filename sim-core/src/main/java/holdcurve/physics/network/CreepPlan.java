package holdcurve.physics.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which row of the state each creeping wall belongs to: one row for each relaxation time at each
 * node. That hangs on which times are equal, not on how long they are.
 */
final class CreepPlan {
  /** For each wall, in the order in which parts bring them, its place among the rows, or -1. */
  final int[] placeOf;

  private final Node[] nodes;
  private final int firstRow;
  private final String[] names;

  /**
   * @param firstRow first row that is free
   */
  CreepPlan(Contributions contributions, NodePlacement placement, int firstRow) {
    this.firstRow = firstRow;
    List<Node> nodesSoFar = new ArrayList<>();
    List<Double> times = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Creep creep : part.creeps) {
        Node node = placement.node(creep.point(), "a hose");
        boolean counts = !node.boundary() && creep.compliance() > 0;
        places.add(counts ? place(node, creep.relaxationTime(), nodesSoFar, times) : -1);
      }
    }
    placeOf = places.stream().mapToInt(Integer::intValue).toArray();
    nodes = nodesSoFar.toArray(Node[]::new);
    names =
        nodesSoFar.stream().map(node -> "hose stretch at " + node.name()).toArray(String[]::new);
  }

  private static int place(Node node, double time, List<Node> nodes, List<Double> times) {
    for (int i = 0; i < nodes.size(); i++) {
      if (nodes.get(i).equals(node) && times.get(i) == time) {
        return i;
      }
    }
    nodes.add(node);
    times.add(time);
    return nodes.size() - 1;
  }

  /** How many rows. */
  int size() {
    return nodes.length;
  }

  /** Whether the walls of the same network in other sizes share rows in just this way. */
  boolean serves(Contributions contributions) {
    double[] times = new double[nodes.length];
    int j = 0;
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Creep creep : part.creeps) {
        int place = placeOf[j++];
        if (place >= 0) {
          if (times[place] != 0 && times[place] != creep.relaxationTime()) {
            return false;
          }
          times[place] = creep.relaxationTime();
        }
      }
    }
    return distinct(times);
  }

  /** Whether no two rows of a node have one time. */
  boolean distinct(double[] times) {
    for (int i = 1; i < times.length; i++) {
      for (int k = 0; k < i; k++) {
        if (times[i] == times[k] && nodes[i].equals(nodes[k])) {
          return false;
        }
      }
    }
    return true;
  }

  /** The walls in the sizes given. */
  Walls walls(Contributions contributions) {
    double[] each = new double[placeOf.length];
    double[] compliance = new double[nodes.length];
    double[] time = new double[nodes.length];
    int j = 0;
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Creep creep : part.creeps) {
        each[j] = creep.compliance();
        int place = placeOf[j++];
        if (place >= 0) {
          compliance[place] += creep.compliance();
          time[place] = creep.relaxationTime();
        }
      }
    }
    return new Walls(this, each, compliance, time);
  }

  /**
   * Sizes of walls.
   *
   * @param each compliance of each wall that a part brings [m³/Pa]
   * @param compliance of each row [m³/Pa]
   * @param time of each row [s]
   */
  record Walls(CreepPlan plan, double[] each, double[] compliance, double[] time) {
    /** Volumes that have crept in where pressures have stood for a time [s]; fills the rows. */
    void fillSoaked(double[] y, double soak) {
      for (int i = 0; i < compliance.length; i++) {
        double taken = 1 - Math.exp(-soak / time[i]);
        y[plan.firstRow + i] = compliance[i] * plan.nodes[i].pressure(y) * taken;
      }
    }

    /** Shares the volumes of the same walls out among rows that may be others. */
    void carry(double[] carried, double[] y, Walls before) {
      Arrays.fill(carried, plan.firstRow, plan.firstRow + compliance.length, 0);
      for (int j = 0; j < each.length; j++) {
        int to = plan.placeOf[j];
        int from = before.plan.placeOf[j];
        if (to >= 0 && from >= 0) {
          carried[plan.firstRow + to] +=
              y[before.plan.firstRow + from] * before.each[j] / before.compliance[from];
        }
      }
    }

    List<NetworkLayout.CreepRow> rows() {
      List<NetworkLayout.CreepRow> rows = new ArrayList<>(compliance.length);
      for (int i = 0; i < compliance.length; i++) {
        rows.add(
            new NetworkLayout.CreepRow(plan.nodes[i], plan.firstRow + i, time[i], compliance[i]));
      }
      return rows;
    }

    void addElements(List<Element> elements) {
      for (int i = 0; i < compliance.length; i++) {
        elements.add(element(i));
      }
    }

    /** Adds the equations of rows that differ from those of others of the same plan. */
    void addDifference(Walls base, List<Element> added, List<Element> removed) {
      for (int i = 0; i < compliance.length; i++) {
        if (compliance[i] != base.compliance[i] || time[i] != base.time[i]) {
          added.add(element(i));
          removed.add(base.element(i));
        }
      }
    }

    private Element element(int i) {
      return new CreepElement(
          plan.names[i], plan.nodes[i], plan.firstRow + i, compliance[i], time[i]);
    }
  }
}
