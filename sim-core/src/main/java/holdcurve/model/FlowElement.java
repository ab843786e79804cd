package holdcurve.model;

import holdcurve.flow.FlowLaw;
import holdcurve.flow.LaminarLaw;

/**
 * A passage between two nodes whose flow depends on the pressure difference alone.
 *
 * @param from node at the upstream end
 * @param to node at the downstream end
 * @param law flow against difference
 */
record FlowElement(String name, Node from, Node to, FlowLaw law) implements Element {
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
