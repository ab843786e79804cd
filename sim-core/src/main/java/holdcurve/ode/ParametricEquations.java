package holdcurve.ode;

/**
 * Equations y' = f(t, y; θ) that know how they change with parameters θ, so that the derivatives of
 * a solution can be integrated beside it.
 */
public interface ParametricEquations extends StiffEquations {
  /** Number of parameters m. */
  int getParameterCount();

  /**
   * The derivatives of the right side by the parameters.
   *
   * @param t time [s]
   * @param y state
   * @param dfdtheta filled with ∂f_i/∂θ_k at {@code [i * stride + k]}; all of those are written,
   *     and no others
   * @param stride at least m
   */
  void computeParameterDerivatives(double t, double[] y, double[] dfdtheta, int stride);
}
