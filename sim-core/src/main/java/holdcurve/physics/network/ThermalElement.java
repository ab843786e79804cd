package holdcurve.physics.network;

/**
 * Trapped fuel that relaxes to the temperature of its surroundings: dθ/dt = −θ/τ, θ being its
 * excess over them. Warming fuel swells: each node gains α·V·dθ/dt.
 *
 * @param row row of θ [K] in the state
 * @param timeConstant τ [s]
 * @param nodes nodes that hold liquid
 * @param swelling α·V of each node [m³/K]
 */
record ThermalElement(String name, int row, double timeConstant, Node[] nodes, double[] swelling)
    implements Element {
  @Override
  public boolean isLinear() {
    return true;
  }

  @Override
  public void addRates(double t, double[] y, double[] rates) {
    double warming = -y[row] / timeConstant;
    rates[row] += warming;
    for (int i = 0; i < nodes.length; i++) {
      nodes[i].receive(rates, swelling[i] * warming);
    }
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    double slope = -1 / timeConstant;
    jacobian[row][row] += slope;
    for (int i = 0; i < nodes.length; i++) {
      jacobian[nodes[i].row()][row] += swelling[i] * slope;
    }
  }
}
