package holdcurve.physics.ode;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/** Equations that hide their derivatives. */
record PlainProblem(StiffEquations inner) implements FirstOrderDifferentialEquations {

  @Override
  public int getDimension() {
    return inner.getDimension();
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    inner.computeDerivatives(t, y, slope);
  }
}
