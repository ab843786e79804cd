package holdcurve.inference.evidence;

/**
 * Evidence of one model, and draws from its posterior.
 *
 * @param logEvidence ln Z [nat]
 * @param draws posterior draws, equally weighted
 */
public record Evidence(double logEvidence, WeightedDraws draws) {
  /** Draws from the Gaussian about a mode, for the range of a size. */
  private static final int DRAWS = 60;

  /** Laplace's approximation: the posterior is taken to be Gaussian about its mode. */
  public static Evidence laplace(Mode mode, long seed) {
    return new Evidence(mode.logEvidence(), mode.draws(seed, DRAWS));
  }

  /** The same draws at another log evidence [nat]. */
  public Evidence withLogEvidence(double log) {
    return new Evidence(log, draws);
  }
}
