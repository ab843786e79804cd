package holdcurve.physics.ode;

/**
 * A smooth non-linear equation in which time stands openly: y' = −2 t y² − 3 sin t (y − e(t)), with
 * the solution e(t) = 1/(1 + t²).
 */
final class FadingPull implements StiffEquations {

  static double exact(double t) {
    return 1 / (1 + t * t);
  }

  @Override
  public int getDimension() {
    return 1;
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    slope[0] = -2 * t * y[0] * y[0] - 3 * Math.sin(t) * (y[0] - exact(t));
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    dfdy[0][0] = -4 * t * y[0] - 3 * Math.sin(t);
  }

  @Override
  public void computeTimeDerivative(double t, double[] y, double[] dfdt) {
    double exactSlope = -2 * t * exact(t) * exact(t);
    dfdt[0] = -2 * y[0] * y[0] - 3 * Math.cos(t) * (y[0] - exact(t)) + 3 * Math.sin(t) * exactSlope;
  }

  @Override
  public boolean isAutonomous() {
    return false;
  }
}
