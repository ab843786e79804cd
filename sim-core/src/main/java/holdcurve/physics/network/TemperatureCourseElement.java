package holdcurve.physics.network;

/**
 * Trapped fuel whose temperature follows a given course: each node gains α·V·dT/dt.
 *
 * @param course T(t)
 * @param nodes nodes that hold liquid
 * @param swelling α·V of each node [m³/K]
 */
record TemperatureCourseElement(
    String name, TemperatureCourse course, Node[] nodes, double[] swelling) implements Element {
  @Override
  public void addRates(double t, double[] y, double[] rates) {
    addScaled(rates, course.rate(t));
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    // the course depends on time alone
  }

  @Override
  public void addTimeDerivative(double t, double[] y, double[] derivative) {
    addScaled(derivative, course.rateOfRate(t));
  }

  private void addScaled(double[] rows, double factor) {
    for (int i = 0; i < nodes.length; i++) {
      nodes[i].receive(rows, swelling[i] * factor);
    }
  }
}
