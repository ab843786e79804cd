package holdcurve.ode;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/** Equations that hide their derivatives. */
record Plain(StiffEquations inner) implements FirstOrderDifferentialEquations {

  @Override
  public int getDimension() {
    return inner.getDimension();
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    inner.computeDerivatives(t, y, slope);
  }
}
