package holdcurve.inference.likelihood;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkLayout;
import holdcurve.physics.network.Node;
import holdcurve.physics.network.Operation;

/** What a circuit at rest gives up between two pressures, where the gauge is tee'd in. */
public final class StoredFuel {
  /** Intervals of Simpson's rule; storage is smooth in pressure. */
  private static final int PIECES = 8;

  private final Network network;
  private final Node node;

  public StoredFuel(Circuit circuit) {
    network =
        NetworkAssembler.assemble(
            Condition.sound(circuit), Operation.holding(), NetworkAssembler.Detail.LUMPED);
    node = network.layout().node(network.layout().gaugePoint());
  }

  /**
   * @param low [Pa gauge]
   * @param high [Pa gauge]
   * @return volume, hose creep left out [m³]
   */
  public double between(double low, double high) {
    double step = (high - low) / PIECES;
    double volume = 0;
    for (int i = 0; i <= PIECES; i++) {
      double weight = i == 0 || i == PIECES ? 1 : i % 2 == 1 ? 4 : 2;
      volume += weight * network.capacity(node.row(), low + i * step) * step / 3;
    }
    return volume;
  }

  /**
   * What hoses go on taking up after the pump has stopped.
   *
   * @param pressure at which they stand [Pa gauge]
   * @param prime how long they have stood so already [s]
   * @param time after that [s]
   * @return volume [m³]
   */
  double creep(double pressure, double prime, double time) {
    double volume = 0;
    for (NetworkLayout.CreepRow creep : network.layout().creepRows()) {
      double left = Math.exp(-prime / creep.relaxationTime());
      double taken = -Math.expm1(-time / creep.relaxationTime());
      volume += creep.compliance() * pressure * left * taken;
    }
    return volume;
  }
}
