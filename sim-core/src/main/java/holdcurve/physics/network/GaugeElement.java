package holdcurve.physics.network;

/**
 * A needle that follows the pressure with a first-order lag: dg/dt = (p − g)/τ.
 *
 * @param node where the gauge is tee'd in
 * @param row row of the shown pressure g [Pa] in the state
 * @param lag τ [s]
 */
record GaugeElement(String name, Node node, int row, double lag) implements Element {
  @Override
  public boolean isLinear() {
    return true;
  }

  @Override
  public void addRates(double t, double[] y, double[] rates) {
    rates[row] += (node.pressure(y) - y[row]) / lag;
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    jacobian[row][row] -= 1 / lag;
    if (!node.boundary()) {
      jacobian[row][node.row()] += 1 / lag;
    }
  }
}
