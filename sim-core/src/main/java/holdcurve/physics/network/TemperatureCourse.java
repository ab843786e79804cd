package holdcurve.physics.network;

/**
 * How the temperature of trapped fuel changes after the pump has stopped: a quick and a slow
 * approach to some other temperature, and a rise that dies away again, as over a hot engine.
 *
 * @param quick change that is reached within minutes [K]
 * @param slow change that is reached within the hour [K]
 * @param soak highest point of the rise that dies away [K]
 */
public record TemperatureCourse(double quick, double slow, double soak) {
  /** Time constants: assumed [s]. */
  private static final double QUICK = 200;

  private static final double SLOW = 1500;
  private static final double SOAK = 350;

  /** Nothing changes. */
  public static final TemperatureCourse STEADY = new TemperatureCourse(0, 0, 0);

  /** How many shapes a course is a sum of. */
  public static final int SHAPES = 3;

  /**
   * What each shape has reached.
   *
   * @param t since the pump stopped [s]
   * @return one a shape, for an amplitude of 1 [-]
   */
  public static double[] shapes(double t) {
    return new double[] {
      -Math.expm1(-t / QUICK), -Math.expm1(-t / SLOW), t / SOAK * Math.exp(1 - t / SOAK)
    };
  }

  /** Change since the pump stopped [K]. */
  public double change(double t) {
    double[] shapes = shapes(t);
    return quick * shapes[0] + slow * shapes[1] + soak * shapes[2];
  }

  /** First derivative [K/s]. */
  double rate(double t) {
    return quick / QUICK * Math.exp(-t / QUICK)
        + slow / SLOW * Math.exp(-t / SLOW)
        + soak / SOAK * (1 - t / SOAK) * Math.exp(1 - t / SOAK);
  }

  /** Second derivative [K/s²]. */
  double rateOfRate(double t) {
    return -quick / (QUICK * QUICK) * Math.exp(-t / QUICK)
        - slow / (SLOW * SLOW) * Math.exp(-t / SLOW)
        + soak / (SOAK * SOAK) * (t / SOAK - 2) * Math.exp(1 - t / SOAK);
  }
}
