package holdcurve.infer;

import holdcurve.job.GaugeSpec;

/**
 * How much readings count. Every curve is a little wrong in ways that no unknown covers, and over
 * several tests small wrongs add up to odds of millions. So the likelihood of the readings counts
 * at a power below one, the smaller the more tests (Miller and Dunson, "Robust Bayesian inference
 * via coarsening", J. Am. Stat. Assoc. 114 (2019) 1113): fits, evidences, odds and ranges of sizes
 * all come from it. What is seen, counted or measured beside the gauge counts in full, and so do
 * the priors of everything unknown.
 *
 * @param power of the likelihood of the readings [-]
 */
record Coarsening(double power) {
  /** However many tests, together they count less than this many. Chosen on generated cases [-]. */
  private static final double MOST_TESTS = 1;

  /** The curves are right: for readings that the model itself made. */
  static final Coarsening NONE = new Coarsening(1);

  /**
   * For a number of tests read from one gauge. Readings finer than the curves are right say more of
   * what is wrong with the curves: how far a wrong curve seems to lie from the true one grows with
   * (A/σ)², the model's error over that of a reading, and a test counts as so many.
   */
  static Coarsening of(int tests, GaugeSpec gauge) {
    UnknownPriors usual = UnknownPriors.usual();
    double fineness = usual.modelError() / usual.readingDeviation(gauge, 1);
    double count = tests * Math.max(1, fineness * fineness);
    return new Coarsening(MOST_TESTS / (MOST_TESTS + count));
  }
}
