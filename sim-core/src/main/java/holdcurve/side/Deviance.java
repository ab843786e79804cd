package holdcurve.side;

/** Probabilities as rows of residuals. */
final class Deviance {
  /** Nothing seen is taken as less likely than this: people write down wrong things [-]. */
  private static final double LEAST = 1e-6;

  private Deviance() {}

  /** r with −½ r² = ln P. */
  static double root(double probability) {
    return Math.sqrt(-2 * Math.log(Math.max(LEAST, Math.min(1, probability))));
  }
}
