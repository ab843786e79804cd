package holdcurve.evidence;

/**
 * A likelihood built on residuals r that are whitened, so that about log L = constant − ½‖r‖².
 *
 * <p>The returned log likelihood may hold more than −½‖r‖²: an outlier part, the logarithm of a
 * fitted scale. The mode and the evidence are those of the true log likelihood; the residuals only
 * give the curvature (Gauss–Newton) for steps and for the shape of the first proposal.
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
   * Derivatives of the residuals, if the model has them. Only a model whose log likelihood is
   * exactly a constant − ½‖r‖² may supply them: otherwise the rest has to be differenced anyway.
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
