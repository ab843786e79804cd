package holdcurve.infer;

/**
 * How much the evidence of readings counts. Every curve is a little wrong in ways that no unknown
 * covers, and over several tests small wrongs add up to odds of millions; a power of the likelihood
 * below one keeps them in bounds (Miller and Dunson, "Robust Bayesian inference via coarsening", J.
 * Am. Stat. Assoc. 114 (2019) 1113). What is seen, counted or measured beside the gauge counts in
 * full, and so do the priors.
 */
final class Coarsening {
  /** Chosen on generated cases with other physics, seeds 1000 to 1099 [-]. */
  static final double POWER = 0.4;

  private Coarsening() {}

  /**
   * Log evidence that is believed [nat].
   *
   * @param logEvidence of everything
   * @param found log likelihood of what was found beside the gauge
   */
  static double of(double logEvidence, double found) {
    return POWER * (logEvidence - found) + found;
  }

  /** The log evidence behind a believed one [nat]. */
  static double behind(double believed, double found) {
    return (believed - found) / POWER + found;
  }
}
