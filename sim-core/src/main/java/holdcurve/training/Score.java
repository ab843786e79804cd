package holdcurve.training;

import java.util.List;

/**
 * What an answer was worth, of {@value #MOST} points. It is measured against what the learner's own
 * tests support, never against the truth: luck earns nothing.
 *
 * @param odds for stating what the tests support; below 0 for being surer than they allow
 * @param possible what honest odds would have earned after these tests
 * @param tests for choosing tests that tell much for their time
 * @param repair for repairing what was wrong, as far as the tests pointed at it
 */
public record Score(double odds, double possible, double tests, double repair) {
  /** Points in all. */
  public static final int MOST = 100;

  /** Points for the odds; the rest is shared by tests and repair. */
  public static final int ODDS = 60;

  /** Points for the tests. */
  public static final int TESTS = 20;

  /** Points for the repair. */
  public static final int REPAIR = 20;

  /** From this probability on, a right repair rests on the tests [-]. */
  private static final double SUPPORTED = 0.5;

  /**
   * A step with its time.
   *
   * @param value as {@link StepWorth#value} has it [-]
   */
  record Spent(double value, double minutes) {}

  /**
   * By the quadratic rule (Brier, Mon. Weather Rev. 78 (1950) 1), expected under the evidence and
   * scaled so that what takes no test earns nothing: the priors or an even spread, whichever the
   * evidence likes better. It is proper: no odds earn more than the evidence's own (Gneiting and
   * Raftery, J. Am. Stat. Assoc. 102 (2007) 359).
   *
   * @param stated by the learner, over the same answers as the others
   * @param evidence what the learner's tests support
   * @param prior what is known before any test
   */
  static double odds(StatedOdds stated, StatedOdds evidence, StatedOdds prior) {
    StatedOdds even = StatedOdds.even(evidence.shares().keySet());
    double untested = Math.min(expected(prior, evidence), expected(even, evidence));
    return ODDS * Math.max(-1, 1 - expected(stated, evidence) / untested);
  }

  /** Brier's score of stated odds, expected where the truth is drawn from the evidence [-]. */
  private static double expected(StatedOdds stated, StatedOdds evidence) {
    double error = 1;
    for (var one : stated.shares().entrySet()) {
      double share = one.getValue();
      error += share * (share - 2 * evidence.of(List.of(one.getKey())));
    }
    return error;
  }

  /**
   * Time well spent, times how much was found out of what could have been.
   *
   * @param gained over the priors [bit]
   * @param left what the best step that there was time for would still tell [bit]
   */
  static double tests(List<Spent> steps, double gained, double left) {
    double minutes = steps.stream().mapToDouble(Spent::minutes).sum();
    if (minutes <= 0) {
      return 0;
    }
    double spent = steps.stream().mapToDouble(s -> s.value() * s.minutes()).sum() / minutes;
    double open = left < StepWorth.WORTHWHILE ? 0 : left;
    return TESTS * spent * (gained + open > 0 ? gained / (gained + open) : 1);
  }

  /**
   * The same with what the repair was worth.
   *
   * @param supported what the tests give what was wrong; 0 without a test [-]
   */
  Score with(RepairScore done, double supported) {
    double share = Math.min(1, supported / SUPPORTED);
    return new Score(odds, possible, tests, REPAIR * share * done.points() / RepairScore.MOST);
  }

  /** What stands in the list: never below 0. */
  public double total() {
    return Math.max(0, odds + tests + repair);
  }
}
