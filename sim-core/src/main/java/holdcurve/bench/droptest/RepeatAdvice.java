package holdcurve.bench.droptest;

import holdcurve.bench.flowsheet.BenchLimits;

/**
 * How many times each injector is to be fired until the test settles it: until the 90 % range of
 * what it passes reaches well inside the limit for a service.
 *
 * @param repeats of each injector [-]
 * @param repeatsIfTwice likewise if each were fired twice as long, with twice the drop [-]
 * @param fewest firings that any injector had so far [-]
 */
public record RepeatAdvice(int repeats, int repeatsIfTwice, int fewest) {
  /** Fewer show no slip: common practice, no source. */
  private static final int FEWEST = 3;

  /** Wanted reach of the range as a share of the limit [-]. */
  private static final double INSIDE = 0.8;

  /** More are not done by anybody. */
  private static final int MOST = 99;

  /** Unsteadiness of the eye as a share of the gauge's step: assumed [-]. */
  private static final double UNSTEADY = 0.3;

  static RepeatAdvice of(DropTest test, BenchLimits limits) {
    int injectors = test.injectors().size();
    int fewest = test.injectors().stream().mapToInt(id -> test.of(id).size()).min().orElseThrow();
    double drop = test.meanDrop();
    double twice = 2 * drop < 0.8 * test.meanBefore() ? 2 * drop : drop;
    return new RepeatAdvice(
        repeats(test.resolution(), drop, injectors, INSIDE * limits.outOfLine()),
        repeats(test.resolution(), twice, injectors, INSIDE * limits.outOfLine()),
        fewest);
  }

  /**
   * @param step of the gauge [Pa]
   * @param drop of one firing [Pa]
   * @param injectors compared [-]
   * @param reach wanted half width of the 90 % range [-]
   */
  static int repeats(double step, double drop, int injectors, double reach) {
    double rounding = step * step / 6;
    double eye = 2 * UNSTEADY * UNSTEADY * step * step;
    double firing = PassedPosterior.FIRING * drop;
    double single = Math.sqrt(rounding + eye + firing * firing) / drop;
    double comparison = Math.sqrt(1 - 0.7 / injectors);
    double root = 1.645 * single * comparison / reach;
    return (int) Math.max(FEWEST, Math.min(MOST, Math.ceil(root * root)));
  }

  /** Whether enough has been done. */
  public boolean isEnough() {
    return fewest >= repeats;
  }
}
