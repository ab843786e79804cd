package holdcurve.inference.evidence;

/**
 * Log likelihood of one model over latent standard-normal coordinates.
 *
 * <p>Implementations are called from one thread at a time within one estimate.
 */
public interface LogLikelihood {
  /** Number of latent coordinates, at least 1 [-]. */
  int dimension();

  /**
   * @param u latent coordinates, length {@link #dimension()}, prior N(0, 1) each [-]; not to be
   *     changed
   * @return natural logarithm of the likelihood [nat]; negative infinity where the model is
   *     impossible or fails. NaN is taken as negative infinity; positive infinity is an error.
   */
  double logLikelihood(double[] u);
}
