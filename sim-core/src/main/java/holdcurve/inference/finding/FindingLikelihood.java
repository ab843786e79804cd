package holdcurve.inference.finding;

/**
 * Something known about a job beside the gauge readings of its holds. It adds rows of residuals to
 * those of the readings, so that −½ Σ r² is its log likelihood but for a constant that is the same
 * for every {@link CircuitState}. Any probability can be a row: the square root of its deviance, −2
 * ln P, with the sign that makes it smooth.
 *
 * <p>Called from several threads at once.
 */
public interface FindingLikelihood {
  /** Number of rows, the same for every truth [-]. */
  int rows();

  /**
   * Fills its rows. Not-a-number, or an exception, says that the truth is impossible.
   *
   * @param out receives the rows from {@code offset} on [-]
   */
  void residuals(CircuitState truth, double[] out, int offset);

  /**
   * Whether it depends on what belongs to one test alone: start pressure, fuel warmth, clamp
   * quality, variation of a leak.
   *
   * @param test place of the hold test in the job
   */
  default boolean concerns(int test) {
    return false;
  }

  /** What of a circuit a piece of evidence depends on: each less than the one before. */
  enum Reach {
    ALL,
    /** Not what is slow or small, such as weeps and creep, but what fills quickly. */
    RUNNING,
    /** Only what settles where a running circuit stands. */
    SETTLED
  }

  /** What of a sound circuit it depends on; the rest needn't be tried. */
  default Reach reach() {
    return Reach.ALL;
  }

  /**
   * Change of a latent coordinate for differences: small for formulas, larger for simulations [-].
   */
  default double differenceStep() {
    return 1e-4;
  }

  /**
   * How many unknowns it has that nothing else depends on, each standard normal beforehand. {@link
   * CircuitState#unknown} gives them.
   */
  default int unknowns() {
    return 0;
  }
}
