package holdcurve.physics.network;

/**
 * A hose wall that goes on stretching: one Kelvin–Voigt branch, dv/dt = (c·p − v)/τ, whose uptake
 * dv/dt the node loses.
 *
 * @param node where the wall stands
 * @param row row of the creep volume v [m³] in the state
 * @param compliance c [m³/Pa]
 * @param relaxationTime τ [s]
 */
record CreepElement(String name, Node node, int row, double compliance, double relaxationTime)
    implements Element {
  @Override
  public boolean isLinear() {
    return true;
  }

  @Override
  public void addRates(double t, double[] y, double[] rates) {
    double uptake = (compliance * node.pressure(y) - y[row]) / relaxationTime;
    rates[row] += uptake;
    node.receive(rates, -uptake);
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    double byPressure = compliance / relaxationTime;
    double byVolume = -1 / relaxationTime;
    jacobian[row][row] += byVolume;
    if (!node.boundary()) {
      int pressure = node.row();
      jacobian[row][pressure] += byPressure;
      jacobian[pressure][pressure] -= byPressure;
      jacobian[pressure][row] -= byVolume;
    }
  }
}
