package holdcurve.physics.balance;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.Node;

/** The states from which a hold starts, and goes on once it is clamped. */
final class HoldStates {
  private HoldStates() {}

  /**
   * When the pump has stopped. Whatever an open way joins to the tank, without a valve between,
   * stands without pressure.
   *
   * @param open equations without clamps
   * @param lumped the same with open lines treated as one place
   */
  static double[] start(Network open, Network lumped, HoldSetup setup) {
    return open.stateAt(
        point -> lumped.layout().node(point).boundary() ? 0 : setup.pressure(),
        setup.soak(),
        setup.warmth());
  }

  /**
   * When the clamps have gone on: each has pushed some fuel to either side.
   *
   * @param y state of {@code open}
   * @param shut equations with clamps
   * @return state of {@code shut}
   */
  static double[] clamped(Network open, double[] y, Network shut, Hold hold) {
    double[] state = shut.carryOver(y, open);
    for (String hose : hold.setup().clamped()) {
      Part part = hold.condition().circuit().part(hose);
      push(shut, state, part.from(), hold.setup().squeezed());
      push(shut, state, part.to(), hold.setup().squeezed());
    }
    return state;
  }

  private static void push(Network network, double[] state, String point, double volume) {
    Node node = network.layout().node(point);
    if (!node.boundary()) {
      state[node.row()] += volume / network.capacity(node.row(), state[node.row()]);
    }
  }
}
