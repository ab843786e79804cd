package holdcurve.evidence;

/**
 * Eight parameters, forty readings: a fall with two relaxations, a drift, an offset and a
 * logarithmic error scale, nonlinear in most of them. Invented numbers.
 */
final class DecaySum implements ResidualLikelihood {
  private static final int READINGS = 40;
  private static final double[] TRUTH = {0.3, -0.4, 0.5, 0.2, -0.3, 0.1, -0.2, 0.3};
  private final double[] y = new double[READINGS];

  DecaySum(long seed) {
    java.util.Random random = new java.util.Random(seed);
    for (int i = 0; i < READINGS; i++) {
      y[i] = value(TRUTH, i) + 0.02 * random.nextGaussian();
    }
  }

  private static double value(double[] u, int i) {
    double t = i / 4.0;
    return 2
        + 0.05 * u[0]
        - (0.5 + 0.1 * u[1]) * Math.exp(0.4 * u[2]) * (1 - Math.exp(-t / Math.exp(1 + 0.3 * u[3])))
        - 0.2 * Math.exp(0.3 * u[4]) * (1 - Math.exp(-t / (0.4 * Math.exp(0.3 * u[5]))))
        - 0.01 * (1 + u[6]) * t;
  }

  @Override
  public int dimension() {
    return 8;
  }

  @Override
  public int residualCount() {
    return READINGS;
  }

  @Override
  public double residuals(double[] u, double[] out) {
    double sigma = 0.02 * Math.exp(0.4 * u[7]);
    for (int i = 0; i < READINGS; i++) {
      out[i] = (y[i] - value(u, i)) / sigma;
    }
    return -0.5 * LogSum.squaredNorm(out) - READINGS * (Math.log(sigma) + 0.5 * LogSum.LOG_TWO_PI);
  }
}
