package holdcurve.model;

import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * Trapped fuel whose temperature was measured: each node gains α·V·dT/dt, with T(t) a smooth curve
 * through the readings.
 *
 * @param temperature T(t) [K] against time [s], once continuously differentiable; held constant
 *     outside its knots
 * @param nodes nodes that hold liquid
 * @param swelling α·V of each node [m³/K]
 */
record MeasuredTemperatureElement(
    String name, PolynomialSplineFunction temperature, Node[] nodes, double[] swelling)
    implements Element {
  @Override
  public void addRates(double t, double[] y, double[] rates) {
    addScaled(rates, derivative(t, 1));
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    // the measured temperature depends on time alone
  }

  @Override
  public void addTimeDerivative(double t, double[] y, double[] derivative) {
    addScaled(derivative, derivative(t, 2));
  }

  private void addScaled(double[] rows, double factor) {
    for (int i = 0; i < nodes.length; i++) {
      nodes[i].receive(rows, swelling[i] * factor);
    }
  }

  private double derivative(double t, int order) {
    double[] knots = temperature.getKnots();
    if (t < knots[0] || t > knots[knots.length - 1]) {
      return 0;
    }
    var once = temperature.polynomialSplineDerivative();
    return order == 1 ? once.value(t) : once.polynomialSplineDerivative().value(t);
  }
}
