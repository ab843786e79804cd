package holdcurve.model;

/**
 * Trapped fuel whose temperature was measured: each node gains α·V·dT/dt, with T(t) a smooth curve
 * through the readings.
 *
 * @param temperature T(t)
 * @param nodes nodes that hold liquid
 * @param swelling α·V of each node [m³/K]
 */
record MeasuredTemperatureElement(
    String name, MeasuredTemperature temperature, Node[] nodes, double[] swelling)
    implements Element {
  @Override
  public void addRates(double t, double[] y, double[] rates) {
    addScaled(rates, temperature.rate(t));
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    // the measured temperature depends on time alone
  }

  @Override
  public void addTimeDerivative(double t, double[] y, double[] derivative) {
    addScaled(derivative, temperature.rateOfRate(t));
  }

  private void addScaled(double[] rows, double factor) {
    for (int i = 0; i < nodes.length; i++) {
      nodes[i].receive(rows, swelling[i] * factor);
    }
  }
}
