package holdcurve.physics.ode;

/** Van der Pol's oscillator: y1' = y2, y2' = a (1 − y1²) y2 − b y1. */
final class VanDerPol extends PublishedProblem {
  private final double damping;
  private final double spring;

  private VanDerPol(String key, double damping, double spring) {
    super(key);
    this.damping = damping;
    this.spring = spring;
  }

  static VanDerPol slow() {
    return new VanDerPol("vdpol_mu1000", 1000, 1);
  }

  static VanDerPol scaled() {
    return new VanDerPol("vdpol_eps1e-6", 1e6, 1e6);
  }

  @Override
  double[] floor() {
    return new double[] {1, spring / damping};
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    slope[0] = y[1];
    slope[1] = damping * (1 - y[0] * y[0]) * y[1] - spring * y[0];
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    fill(dfdy[0], 0, 1);
    fill(dfdy[1], -2 * damping * y[0] * y[1] - spring, damping * (1 - y[0] * y[0]));
  }
}
