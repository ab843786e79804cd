package holdcurve.physics.ode;

/**
 * Bounds on the steps of one run.
 *
 * @param smallest shortest step, the last of a run excepted [s]; 0 leaves only rounding as a bound
 * @param largest longest step [s]
 * @param count most steps, accepted and rejected together [-]
 */
public record StepLimits(double smallest, double largest, int count) {
  /** No bounds on the length, a hundred thousand steps. */
  public static final StepLimits WIDE = new StepLimits(0, Double.POSITIVE_INFINITY, 100_000);

  public StepLimits {
    if (!(smallest >= 0 && smallest <= largest && largest > 0)) {
      throw new IllegalArgumentException(
          "step limits of %s s and %s s; 0 <= smallest <= largest is needed"
              .formatted(smallest, largest));
    }
    if (count < 1) {
      throw new IllegalArgumentException("step limit of " + count + "; at least 1 is needed");
    }
  }
}
