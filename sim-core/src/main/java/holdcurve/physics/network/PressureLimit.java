package holdcurve.physics.network;

/**
 * Beyond some pressure nothing of a low-pressure circuit is what the model says: hoses slip off,
 * joints give way. Fuel that is shut in with nothing soft beside it gets there within two kelvin of
 * warming, since it rises by its expansion times its bulk modulus.
 */
public final class PressureLimit {
  /**
   * As much as the strongest pump that a circuit may state. Hoses of such circuits are made for a
   * half of that or less: common practice, no source [Pa gauge].
   */
  public static final double MOST = 20e5;

  private PressureLimit() {}

  /**
   * @param circuit what its owner calls it
   * @param time of the state, since the pump stop [s]
   * @throws SimulationException if a pressure lies above {@link #MOST}
   */
  public static void check(String circuit, Network network, double time, double[] y) {
    for (int row = 0; row < network.layout().nodes().size(); row++) {
      if (y[row] > MOST) {
        throw SimulationException.bursting(
            circuit, network.layout().nodes().get(row).name(), time, MOST);
      }
    }
  }
}
