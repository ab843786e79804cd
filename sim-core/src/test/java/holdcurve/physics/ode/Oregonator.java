package holdcurve.physics.ode;

/** The Belousov–Zhabotinskii reaction in three species. */
final class Oregonator extends PublishedProblem {
  Oregonator() {
    super("orego");
  }

  @Override
  double[] floor() {
    return filled(1);
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    slope[0] = 77.27 * (y[1] + y[0] * (1 - 8.375e-6 * y[0] - y[1]));
    slope[1] = (y[2] - (1 + y[0]) * y[1]) / 77.27;
    slope[2] = 0.161 * (y[0] - y[2]);
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    fill(dfdy[0], 77.27 * (1 - 2 * 8.375e-6 * y[0] - y[1]), 77.27 * (1 - y[0]), 0);
    fill(dfdy[1], -y[1] / 77.27, -(1 + y[0]) / 77.27, 1 / 77.27);
    fill(dfdy[2], 0.161, 0, -0.161);
  }
}
