package holdcurve.inference.noise;

import holdcurve.inference.data.TestInformation;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.Job;
import java.util.List;

/**
 * How much readings count. Every curve is a little wrong in ways that no unknown covers, and over
 * several tests small wrongs add up to odds of millions. So the likelihood of the readings counts
 * at a power below one, the smaller the more the tests can tell (Miller and Dunson, "Robust
 * Bayesian inference via coarsening", J. Am. Stat. Assoc. 114 (2019) 1113): fits, evidences, odds
 * and ranges of sizes all come from it. A test that can tell little, such as a hold broken off
 * after a minute, takes hardly any power from the others. What is seen, counted or measured beside
 * the gauge counts in full, and so do the priors of everything unknown.
 *
 * @param power of the likelihood of the readings of the test that tells most [-]
 * @param shares of that power that the readings of each test have [-]; a test beyond the list has
 *     all of it
 */
public record Coarsening(double power, List<Double> shares) {
  /** However many tests, together they count less than this many. Chosen on generated cases [-]. */
  private static final double MOST_TESTS = 1;

  /** The curves are right: for readings that the model itself made. */
  public static final Coarsening NONE = new Coarsening(1);

  public Coarsening {
    shares = List.copyOf(shares);
  }

  /** The same for every test. */
  public Coarsening(double power) {
    this(power, List.of());
  }

  /** For the tests of a job. */
  public static Coarsening of(Job job) {
    return of(job, 0);
  }

  /**
   * For the tests of a job and some more. Readings finer than the curves are right say more of what
   * is wrong with the curves: how far a wrong curve seems to lie from the true one grows with
   * (A/σ)², the model's error over that of a reading, and a test counts as so many.
   *
   * @param more whole tests still to be done
   */
  public static Coarsening of(Job job, int more) {
    List<Double> information = job.tests().stream().map(TestInformation::of).toList();
    double most = information.stream().mapToDouble(i -> i).max().orElse(1);
    double sum = information.stream().mapToDouble(i -> i).sum() + more;
    return new Coarsening(
        power(Math.max(1, sum), job.gauge()), information.stream().map(i -> i / most).toList());
  }

  /** Power for a number of whole tests read from one gauge [-]. */
  public static double power(double tests, GaugeSpec gauge) {
    UnknownPriors usual = UnknownPriors.usual();
    double fineness = usual.modelError() / usual.readingDeviation(gauge, 1);
    double count = tests * Math.max(1, fineness * fineness);
    return MOST_TESTS / (MOST_TESTS + count);
  }

  /** Share of the power that the readings of a test have [-]. */
  public double share(int test) {
    return test < shares.size() ? shares.get(test) : 1;
  }
}
