package holdcurve.physics.ode;

/**
 * Chooses step lengths from error norms, with the predictive controller of Gustafsson as described
 * by Hairer &amp; Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, sect. IV.8
 * (limits of their code RODAS, from memory): the standard rule, held back by the trend of the last
 * two steps, never growing right after a rejection.
 */
final class StepSizeController {
  private static final double SAFETY = 0.9;
  private static final double LARGEST_GROWTH = 6;
  private static final double STRONGEST_CUT = 0.2;
  private static final double SMALLEST_REMEMBERED_ERROR = 0.01;

  private final int root;
  private double previousStep;
  private double previousError;
  private boolean rejected;

  /**
   * @param embeddedOrder order of the lower of the two solutions compared
   */
  StepSizeController(int embeddedOrder) {
    root = embeddedOrder + 1;
  }

  /** Forgets the steps before, for a new run or after a jump. */
  void reset() {
    previousStep = 0;
    previousError = 0;
    rejected = false;
  }

  /**
   * @param h length of the step just accepted [s]
   * @param error its error norm [-], at most 1
   * @return length of the next step [s]
   */
  double afterAcceptance(double h, double error) {
    double factor = limited(SAFETY / root(error));
    if (previousStep != 0) {
      double trend = previousError / (error * error);
      factor = Math.min(factor, limited(SAFETY * (h / previousStep) * root(trend)));
    }
    if (rejected) {
      factor = Math.min(factor, 1);
    }
    previousStep = h;
    previousError = Math.max(error, SMALLEST_REMEMBERED_ERROR);
    rejected = false;
    return h * factor;
  }

  /**
   * @param h length of the step just rejected [s]
   * @param error its error norm [-], above 1; infinite or not a number when the step has no value
   * @return length to try next [s]
   */
  double afterRejection(double h, double error) {
    rejected = true;
    return h * Math.min(SAFETY, limited(SAFETY / root(error)));
  }

  private static double limited(double factor) {
    return factor > STRONGEST_CUT ? Math.min(factor, LARGEST_GROWTH) : STRONGEST_CUT;
  }

  private double root(double x) {
    return root == 4 ? Math.sqrt(Math.sqrt(x)) : Math.pow(x, 1.0 / root);
  }
}
