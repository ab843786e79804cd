package holdcurve.inference.finding;

/** Probabilities as rows of residuals. */
final class Deviance {
  /** Against the logarithm of nil only: what people write down wrongly is in the data file [-]. */
  private static final double LEAST = 1e-100;

  private Deviance() {}

  /** r with −½ r² = ln P. */
  static double root(double probability) {
    return Math.sqrt(-2 * Math.log(Math.max(LEAST, Math.min(1, probability))));
  }
}
