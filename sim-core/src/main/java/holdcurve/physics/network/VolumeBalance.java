package holdcurve.physics.network;

/** What shows that no fuel is made or lost: a sum that stays the same whatever flows where. */
public final class VolumeBalance {
  private VolumeBalance() {}

  /**
   * Fuel held beyond that of a circuit at rest, at the temperature it has, plus what boundaries
   * received.
   *
   * @param network with a ledger, {@link NetworkAssembler.Detail#LEDGER}
   * @param y its state
   * @return [m³]
   */
  public static double total(Network network, double[] y) {
    double volume = network.storedVolume(y);
    for (Node boundary : network.layout().ledger()) {
      volume += y[boundary.row()];
    }
    for (Element element : network.elements()) {
      if (element instanceof ThermalElement thermal) {
        for (double swelling : thermal.swelling()) {
          volume -= swelling * y[thermal.row()];
        }
      }
    }
    return volume;
  }
}
