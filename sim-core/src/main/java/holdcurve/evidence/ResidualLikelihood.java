package holdcurve.evidence;

/**
 * A likelihood built on residuals r that are whitened, so that about log L = constant − ½‖r‖².
 *
 * <p>The residuals only serve to find the mode and the shape around it (Gauss–Newton). The evidence
 * uses the returned log likelihood, which may differ: an outlier part, a fitted scale.
 */
public interface ResidualLikelihood extends LogLikelihood {
  /** Number of residuals [-]. */
  int residualCount();

  /**
   * @param u latent coordinates, length {@link #dimension()} [-]; not to be changed
   * @param out receives the whitened residuals, length {@link #residualCount()} [-]; any non-finite
   *     value means that the model failed here
   * @return log likelihood at u [nat], as {@link #logLikelihood}
   */
  double residuals(double[] u, double[] out);

  /**
   * Derivatives of the residuals, if the model has them.
   *
   * @param u latent coordinates [-]
   * @param out receives dr_i/du_j at {@code out[i][j]} [-]
   * @return false if the model has none: differences are taken then
   */
  default boolean jacobian(double[] u, double[][] out) {
    return false;
  }

  /**
   * Step of the forward differences in u [-]. A model solved with a relative tolerance ε should
   * answer about √ε, so that solver noise doesn't drown the slope.
   */
  default double differenceStep() {
    return 1e-4;
  }

  @Override
  default double logLikelihood(double[] u) {
    return residuals(u, new double[residualCount()]);
  }
}
