package holdcurve.evidence;

/**
 * Evidence of one model, its posterior draws, and how far to believe them.
 *
 * <p>The diagnostics judge what was found. A separate mode that neither the starts nor the prior
 * draws have met shows in none of them: give {@link Settings#starts()} where one is suspected.
 *
 * @param logEvidence ln Z [nat]; negative infinity when no possible point was found
 * @param standardError Monte Carlo standard error of {@code logEvidence} [nat]; infinite when
 *     nothing can be said
 * @param draws posterior draws with normalised weights
 * @param effectiveSampleSize of the draws [-]
 * @param paretoShape Pareto k̂ of the importance weights [-]; NaN for {@link Method#TEMPERED}
 * @param method how the numbers were obtained
 * @param reliable whether the diagnostics pass
 * @param likelihoodCalls calls spent in all, mode search included [-]
 * @param laplaceLogEvidence Laplace's approximation over the modes found [nat]; NaN without modes
 * @param maximumLogLikelihood largest log likelihood met [nat]
 * @param bestPoint where it was met [-]
 * @param modes number of distinct modes found [-]
 */
public record Evidence(
    double logEvidence,
    double standardError,
    WeightedDraws draws,
    double effectiveSampleSize,
    double paretoShape,
    Method method,
    boolean reliable,
    long likelihoodCalls,
    double laplaceLogEvidence,
    double maximumLogLikelihood,
    double[] bestPoint,
    int modes) {

  /** The same draws at another log evidence [nat]. */
  public Evidence withLogEvidence(double log) {
    return new Evidence(
        log,
        standardError,
        draws,
        effectiveSampleSize,
        paretoShape,
        method,
        reliable,
        likelihoodCalls,
        laplaceLogEvidence,
        maximumLogLikelihood,
        bestPoint,
        modes);
  }

  /** How an evidence was obtained. */
  public enum Method {
    /** Adaptive importance sampling on the modes. */
    IMPORTANCE,
    /** Tempered sequential Monte Carlo from the prior. */
    TEMPERED
  }
}
