package holdcurve.calibration.blind;

/**
 * Slow stretch of rubber: not two time constants but a whole spectrum of them, so that it goes with
 * the logarithm or a small power of time. Unit uptake for unit pressure and unit instant stretch.
 *
 * @param time of the branches [s]
 * @param share what each takes up in the end, of the instant stretch [-]
 */
record Creep(double[] time, double[] share) {
  private static final int BRANCHES = 11;
  private static final double FIRST = 0.6;

  /** Half a decade between neighbours. */
  private static final double RATIO = Math.sqrt(10);

  /**
   * @param perDecade share of the instant stretch taken up in the first decade after a second [-]
   * @param power 0 for the logarithm of time, above for t^power [-]
   */
  static Creep of(double perDecade, double power) {
    double[] time = new double[BRANCHES];
    double[] share = new double[BRANCHES];
    for (int i = 0; i < BRANCHES; i++) {
      time[i] = FIRST * Math.pow(RATIO, i);
      share[i] = perDecade / 2 * Math.pow(time[i], power);
    }
    return new Creep(time, share);
  }
}
