package holdcurve.physics.network;

/**
 * A place with one pressure: either a state of the network, or a boundary whose pressure is given.
 *
 * @param name a connection point that lies on it
 * @param row row in the state vector that collects the flow into this node: its pressure, or for a
 *     boundary in the ledger the volume received [m³]; -1 for a boundary that isn't recorded
 * @param boundary whether the pressure is given
 * @param fixedPressure pressure of a boundary [Pa gauge]; unused otherwise
 */
public record Node(String name, int row, boolean boundary, double fixedPressure) {
  static Node inner(String name, int row) {
    return new Node(name, row, false, 0);
  }

  static Node fixed(String name, int row, double pressure) {
    return new Node(name, row, true, pressure);
  }

  /** Gauge pressure [Pa] in the state {@code y}. */
  public double pressure(double[] y) {
    return boundary ? fixedPressure : y[row];
  }

  /** Adds a volume flow into this node [m³/s]. */
  public void receive(double[] rates, double flow) {
    if (row >= 0) {
      rates[row] += flow;
    }
  }
}
