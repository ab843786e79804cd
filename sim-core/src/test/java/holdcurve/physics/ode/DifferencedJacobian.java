package holdcurve.physics.ode;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * Gives equations without derivatives a Jacobian by forward differences, at n + 1 calls of f for
 * each Jacobian and one more for the time derivative. A Rosenbrock method takes the Jacobian as
 * exact, so the order falls a little at tight tolerances: analytic derivatives are better. The
 * calls made for differences don't count against an integrator's limit on evaluations.
 */
public final class DifferencedJacobian implements StiffEquations {
  private static final double ROOT_OF_ROUNDING = Math.sqrt(Math.ulp(1.0));

  private final FirstOrderDifferentialEquations equations;
  private final double[] floor;
  private final double timeFloor;
  private final double[] base;
  private final double[] shifted;
  private final double[] point;

  /**
   * @param equations right side
   * @param timeFloor a time that counts as small [s], positive
   * @param floor size below which a component counts as small [unit of the component], positive
   */
  public DifferencedJacobian(
      FirstOrderDifferentialEquations equations, double timeFloor, double... floor) {
    this.equations = equations;
    this.timeFloor = timeFloor;
    this.floor = floor.clone();
    base = new double[floor.length];
    shifted = new double[floor.length];
    point = new double[floor.length];
  }

  @Override
  public int getDimension() {
    return equations.getDimension();
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    equations.computeDerivatives(t, y, slope);
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    equations.computeDerivatives(t, y, base);
    System.arraycopy(y, 0, point, 0, y.length);
    for (int j = 0; j < y.length; j++) {
      point[j] = y[j] + ROOT_OF_ROUNDING * Math.max(Math.abs(y[j]), floor[j]);
      equations.computeDerivatives(t, point, shifted);
      for (int i = 0; i < y.length; i++) {
        dfdy[i][j] = (shifted[i] - base[i]) / (point[j] - y[j]);
      }
      point[j] = y[j];
    }
  }

  @Override
  public void computeTimeDerivative(double t, double[] y, double[] dfdt) {
    double later = t + ROOT_OF_ROUNDING * Math.max(Math.abs(t), timeFloor);
    equations.computeDerivatives(t, y, base);
    equations.computeDerivatives(later, y, shifted);
    for (int i = 0; i < y.length; i++) {
      dfdt[i] = (shifted[i] - base[i]) / (later - t);
    }
  }

  @Override
  public boolean isAutonomous() {
    return false;
  }
}
