package holdcurve.physics.ode;

/** Robertson's three reactions, with rates nine decades apart. */
final class Robertson extends PublishedProblem {
  Robertson() {
    super("robertson");
  }

  @Override
  double[] floor() {
    return new double[] {1e-8, 1e-12, 1e-8};
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    double first = 0.04 * y[0] - 1e4 * y[1] * y[2];
    double second = 3e7 * y[1] * y[1];
    slope[0] = -first;
    slope[1] = first - second;
    slope[2] = second;
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    fill(dfdy[0], -0.04, 1e4 * y[2], 1e4 * y[1]);
    fill(dfdy[1], 0.04, -1e4 * y[2] - 6e7 * y[1], -1e4 * y[1]);
    fill(dfdy[2], 0, 6e7 * y[1], 0);
  }
}
