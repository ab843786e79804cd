package holdcurve.physics.ode;

/** Eight species of plant physiology ("high irradiance responses"). */
final class Hires extends PublishedProblem {
  Hires() {
    super("hires");
  }

  @Override
  double[] floor() {
    return filled(1e-4);
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    double bound = 280 * y[5] * y[7];
    slope[0] = -1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007;
    slope[1] = 1.71 * y[0] - 8.75 * y[1];
    slope[2] = -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4];
    slope[3] = 8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3];
    slope[4] = -1.745 * y[4] + 0.43 * y[5] + 0.43 * y[6];
    slope[5] = -bound + 0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6];
    slope[6] = bound - 1.81 * y[6];
    slope[7] = -slope[6];
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    double byFree = 280 * y[7];
    double byLeft = 280 * y[5];
    fill(dfdy[0], -1.71, 0.43, 8.32, 0, 0, 0, 0, 0);
    fill(dfdy[1], 1.71, -8.75, 0, 0, 0, 0, 0, 0);
    fill(dfdy[2], 0, 0, -10.03, 0.43, 0.035, 0, 0, 0);
    fill(dfdy[3], 0, 8.32, 1.71, -1.12, 0, 0, 0, 0);
    fill(dfdy[4], 0, 0, 0, 0, -1.745, 0.43, 0.43, 0);
    fill(dfdy[5], 0, 0, 0, 0.69, 1.71, -byFree - 0.43, 0.69, -byLeft);
    fill(dfdy[6], 0, 0, 0, 0, 0, byFree, -1.81, byLeft);
    fill(dfdy[7], 0, 0, 0, 0, 0, -byFree, 1.81, -byLeft);
  }
}
