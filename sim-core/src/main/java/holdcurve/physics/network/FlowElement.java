package holdcurve.physics.network;

import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.RoundedLaw;

/**
 * A passage between two nodes whose flow depends on the pressure difference alone.
 *
 * @param from node at the upstream end
 * @param to node at the downstream end
 * @param law flow against difference
 */
record FlowElement(String name, Node from, Node to, FlowLaw law) implements Element {
  /** Difference along an open line that matters to nobody: 0.01 mbar [Pa]. */
  static final double NEGLIGIBLE = 1;

  /**
   * A line that stands open. Little flow through a wide one takes thousandths of a pascal, far
   * below the error that a pressure may have.
   */
  static FlowElement open(String name, Node from, Node to, FlowLaw law) {
    FlowLaw rounded = law instanceof LaminarLaw ? law : new RoundedLaw(law, NEGLIGIBLE);
    return new FlowElement(name, from, to, rounded);
  }

  @Override
  public boolean isLinear() {
    return law instanceof LaminarLaw;
  }

  @Override
  public void addRates(double t, double[] y, double[] rates) {
    double flow = law.flow(from.pressure(y) - to.pressure(y));
    from.receive(rates, -flow);
    to.receive(rates, flow);
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    double slope = law.slope(from.pressure(y) - to.pressure(y));
    Jacobians.addFlow(jacobian, from, to, from, slope);
    Jacobians.addFlow(jacobian, from, to, to, -slope);
  }
}
