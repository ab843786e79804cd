package holdcurve.physics.network;

import holdcurve.physics.circuit.Condition;
import java.util.function.ToDoubleFunction;

/**
 * A network as its difference from another with the same states: what is needed of it to follow a
 * derivative by whatever was moved. Where only sizes of a few parts were moved it is found without
 * assembling the network.
 */
public final class NetworkVariant {
  private final Network base;
  private final NetworkDifference difference;
  private final CreepPlan.Walls walls;

  NetworkVariant(Network base, NetworkDifference difference, CreepPlan.Walls walls) {
    this.base = base;
    this.difference = difference;
    this.walls = walls;
  }

  /** The base itself. */
  public static NetworkVariant same(Network base) {
    return new NetworkVariant(base, NetworkDifference.NONE, base.origin().walls());
  }

  /** Any network as a variant of another with the same states, see {@link Network#hasStatesOf}. */
  public static NetworkVariant of(Network base, Network moved) {
    return new NetworkVariant(base, NetworkDifference.between(base, moved), moved.origin().walls());
  }

  /**
   * The network of another condition or operation.
   *
   * @param assembler for what can't be told from the parts that differ
   * @return null if its states are others than the base's
   */
  public static NetworkVariant of(
      Network base, Condition condition, Operation operation, NetworkAssembler assembler) {
    NetworkVariant quick =
        new PartDifferences(base, assembler.memory()).variant(condition, operation);
    if (quick != null) {
      return quick;
    }
    Network moved = assembler.assemble(condition, operation);
    return base.hasStatesOf(moved) ? of(base, moved) : null;
  }

  NetworkDifference difference() {
    return difference;
  }

  /** Like {@link Network#stateAt}. */
  public double[] stateAt(ToDoubleFunction<String> pressure, double soak, double warmth) {
    return base.stateAt(pressure, soak, warmth, walls);
  }

  /**
   * Like {@link Network#carryOver}.
   *
   * @param transfer between the bases
   */
  public double[] carryOver(double[] y, NetworkVariant before, StateTransfer transfer) {
    return transfer.carry(y, before.walls, walls);
  }

  /** The node that a connection point lies on. */
  public Node node(String point) {
    return base.layout().node(point);
  }

  /** Like {@link Network#capacity}. */
  public double capacity(int node, double pressure) {
    return base.capacity(node, pressure) + difference.capacity(node, pressure);
  }
}
