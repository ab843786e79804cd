package holdcurve.infer;

/**
 * How much the evidence of readings counts. Every curve is a little wrong in ways that no unknown
 * covers, and over several tests small wrongs add up to odds of millions; a power of the likelihood
 * below one, the smaller the more tests, keeps them in bounds (Miller and Dunson, "Robust Bayesian
 * inference via coarsening", J. Am. Stat. Assoc. 114 (2019) 1113). What is seen, counted or
 * measured beside the gauge counts in full, and so do the priors.
 *
 * @param power of the likelihood of the readings [-]
 */
record Coarsening(double power) {
  /** However many tests, they count no more than this many. Chosen on generated cases [-]. */
  private static final double MOST_TESTS = 3;

  static Coarsening of(int tests) {
    return new Coarsening(MOST_TESTS / (MOST_TESTS + tests));
  }

  /**
   * Log evidence that is believed [nat].
   *
   * @param logEvidence of everything
   * @param found log likelihood of what was found beside the gauge
   */
  double believed(double logEvidence, double found) {
    return power * (logEvidence - found) + found;
  }

  /** The log evidence behind a believed one [nat]. */
  double behind(double believed, double found) {
    return (believed - found) / power + found;
  }

  /**
   * The range of a size under the power of the likelihood: as many times wider on its logarithm as
   * a Gaussian posterior is that the readings make.
   */
  Interval widened(Interval size) {
    if (!(size.low() > 0)) {
      return size;
    }
    double more = 1 / Math.sqrt(power);
    return new Interval(
        size.middle() * Math.pow(size.low() / size.middle(), more),
        size.middle(),
        size.middle() * Math.pow(size.high() / size.middle(), more));
  }
}
