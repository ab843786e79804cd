package holdcurve.physics.network;

import java.util.Arrays;
import java.util.Map;

/**
 * How the state of one network becomes that of another of the same parts: pressures stay by
 * connection points, creep volumes are shared out among the walls they belong to, temperature,
 * gauge and ledger stay.
 */
public final class StateTransfer {
  private static final int NONE = -1;

  /** For each row the row before that it takes over, or NONE for a constant. */
  private final int[] source;

  private final double[] constant;

  private StateTransfer(int rows) {
    source = new int[rows];
    constant = new double[rows];
    Arrays.fill(source, NONE);
  }

  /** From a state of {@code before} to one of {@code after}: networks of the same parts. */
  public static StateTransfer between(Network before, Network after) {
    NetworkLayout to = after.layout();
    NetworkLayout from = before.layout();
    if (before.origin().walls().each().length != after.origin().walls().each().length) {
      throw new IllegalArgumentException("a state handed over to a network of other hoses");
    }
    StateTransfer transfer = new StateTransfer(to.dimension());
    for (Node node : to.nodes()) {
      Node earlier = from.node(node.name());
      transfer.source[node.row()] = earlier.boundary() ? NONE : earlier.row();
      transfer.constant[node.row()] = earlier.fixedPressure();
    }
    to.warmthRows().forEach((region, row) -> transfer.source[row] = from.warmthRow(region));
    for (Map.Entry<String, Integer> line : to.flowRows().entrySet()) {
      transfer.source[line.getValue()] = from.flowRows().getOrDefault(line.getKey(), NONE);
    }
    if (to.gaugeRow() >= 0) {
      transfer.placeGauge(from, to);
    }
    for (Node boundary : to.ledger()) {
      for (Node earlier : from.ledger()) {
        if (earlier.name().equals(boundary.name())) {
          transfer.source[boundary.row()] = earlier.row();
        }
      }
    }
    return transfer;
  }

  private void placeGauge(NetworkLayout from, NetworkLayout to) {
    Node at = to.node(to.gaugePoint());
    if (from.gaugeRow() >= 0) {
      source[to.gaugeRow()] = from.gaugeRow();
    } else if (at.boundary()) {
      constant[to.gaugeRow()] = at.fixedPressure();
    } else {
      source[to.gaugeRow()] = source[at.row()];
      constant[to.gaugeRow()] = constant[at.row()];
    }
  }

  /**
   * @param y state before
   * @param before walls before
   * @param after walls after
   * @return state after
   */
  double[] carry(double[] y, CreepPlan.Walls before, CreepPlan.Walls after) {
    double[] carried = new double[source.length];
    for (int i = 0; i < carried.length; i++) {
      carried[i] = source[i] == NONE ? constant[i] : y[source[i]];
    }
    after.carry(carried, y, before);
    return carried;
  }
}
