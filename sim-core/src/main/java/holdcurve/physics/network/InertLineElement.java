package holdcurve.physics.network;

import holdcurve.physics.flow.FlowLaw;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A line whose fuel has mass: I dQ/dt = p_from − p_to − R Q − B Q |Q|, with the flow Q a state.
 *
 * <p>R is the line's laminar resistance; B makes the steady flow that of its friction law at {@link
 * #REFERENCE_FLOW}. Between, the turbulent loss goes as the square of the flow, where the law goes
 * as its power 1.75 to 2: from half to twice that flow the two differ by less than 15 %.
 *
 * @param row row of Q [m³/s] in the state
 * @param inertance I = ρ L/A [Pa·s²/m³]
 * @param laminar R [Pa·s/m³]
 * @param turbulent B [Pa·s²/m⁶]
 */
record InertLineElement(
    String name, Node from, Node to, int row, double inertance, double laminar, double turbulent)
    implements Element {
  /** Flow at which the steady loss is the friction law's: 1 L/min [m³/s]. */
  static final double REFERENCE_FLOW = 1e-3 / 60;

  private static final double HIGHEST = 1e9;

  static InertLineElement of(
      String name, Node from, Node to, int row, double inertance, FlowLaw law) {
    double laminar = 1 / law.slope(0);
    double drop =
        new BrentSolver(1e-6)
            .solve(200, p -> law.flow(p) - REFERENCE_FLOW, 0, HIGHEST, laminar * REFERENCE_FLOW);
    double rest = Math.max(0, drop - laminar * REFERENCE_FLOW);
    return new InertLineElement(
        name, from, to, row, inertance, laminar, rest / (REFERENCE_FLOW * REFERENCE_FLOW));
  }

  @Override
  public void addRates(double t, double[] y, double[] rates) {
    double flow = y[row];
    from.receive(rates, -flow);
    to.receive(rates, flow);
    double loss = (laminar + turbulent * Math.abs(flow)) * flow;
    rates[row] += (from.pressure(y) - to.pressure(y) - loss) / inertance;
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    jacobian[row][row] -= (laminar + 2 * turbulent * Math.abs(y[row])) / inertance;
    addEnd(jacobian, from, 1);
    addEnd(jacobian, to, -1);
  }

  private void addEnd(double[][] jacobian, Node end, double sign) {
    if (end.row() >= 0) {
      jacobian[end.row()][row] -= sign;
    }
    if (!end.boundary()) {
      jacobian[row][end.row()] += sign / inertance;
    }
  }
}
