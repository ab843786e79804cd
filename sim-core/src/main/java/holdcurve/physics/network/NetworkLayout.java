package holdcurve.physics.network;

import java.util.List;
import java.util.Map;

/**
 * Which row of the state stands for what.
 *
 * @param nodes inner nodes, by row
 * @param places connection point → node or boundary it lies on
 * @param creepRows hose walls
 * @param warmthRows region → row of its fuel's excess temperature; empty if it was measured
 * @param flowRows line → row of its flow, where its fuel has mass
 * @param gaugeRow row of the gauge reading, or -1
 * @param gaugePoint connection point of the gauge, or empty
 * @param ledger boundaries whose received volume is a state
 * @param dimension number of rows
 */
public record NetworkLayout(
    List<Node> nodes,
    Map<String, Node> places,
    List<CreepRow> creepRows,
    Map<Region, Integer> warmthRows,
    Map<String, Integer> flowRows,
    int gaugeRow,
    String gaugePoint,
    List<Node> ledger,
    int dimension) {

  /**
   * One relaxation time [s] of the hose walls at one node, with the compliance of all of them
   * [m³/Pa].
   */
  public record CreepRow(Node node, int row, double relaxationTime, double compliance) {}

  /** The node that a connection point lies on. */
  public Node node(String point) {
    Node node = places.get(point);
    if (node == null) {
      throw new IllegalArgumentException("no connection point '" + point + "' in this circuit");
    }
    return node;
  }

  /** Row of the excess temperature of fuel under the bonnet, or -1 if it was measured. */
  public int warmthRow() {
    return warmthRow(Region.ENGINE);
  }

  /** Row of the excess temperature of a region's fuel, or -1 if it has none. */
  public int warmthRow(Region region) {
    return warmthRows.getOrDefault(region, -1);
  }

  /** Whether each row stands for the same in both, whatever the sizes behind it. */
  boolean isLike(NetworkLayout other) {
    if (dimension != other.dimension
        || gaugeRow != other.gaugeRow
        || creepRows.size() != other.creepRows.size()
        || !warmthRows.equals(other.warmthRows)
        || !flowRows.equals(other.flowRows)
        || !nodes.equals(other.nodes)
        || !ledger.equals(other.ledger)) {
      return false;
    }
    for (int i = 0; i < creepRows.size(); i++) {
      if (!creepRows.get(i).node().equals(other.creepRows.get(i).node())) {
        return false;
      }
    }
    return true;
  }

  /** What a row is, for messages: such as "pressure at rail". */
  public String describe(int row) {
    if (row < nodes.size()) {
      return "pressure at " + nodes.get(row).name();
    }
    for (Map.Entry<Region, Integer> warmth : warmthRows.entrySet()) {
      if (warmth.getValue() == row) {
        return "fuel temperature, " + warmth.getKey().title();
      }
    }
    if (row == gaugeRow) {
      return "gauge reading";
    }
    for (Map.Entry<String, Integer> flow : flowRows.entrySet()) {
      if (flow.getValue() == row) {
        return "flow through " + flow.getKey();
      }
    }
    for (CreepRow creep : creepRows) {
      if (creep.row() == row) {
        return "hose stretch at " + creep.node().name();
      }
    }
    return "fuel received by a boundary";
  }

  /**
   * Size below which an absolute error of a row no longer matters [unit of the row]: 0.01 bar, 1
   * mm³, 0.01 K, 1 mm³/s.
   *
   * @return one value a row
   */
  public double[] scales() {
    double[] scales = new double[dimension];
    for (int row = 0; row < dimension; row++) {
      scales[row] = row < nodes.size() || row == gaugeRow ? 1e3 : 1e-9;
    }
    warmthRows.values().forEach(row -> scales[row] = 1e-2);
    return scales;
  }
}
