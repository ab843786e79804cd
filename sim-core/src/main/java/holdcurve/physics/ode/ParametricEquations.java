package holdcurve.physics.ode;

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

  /**
   * {@link #computeJacobian} and {@link #computeParameterDerivatives} at one place, for equations
   * in which they share work.
   */
  default void computeVariation(
      double t, double[] y, double[][] dfdy, double[] dfdtheta, int stride) {
    computeJacobian(t, y, dfdy);
    computeParameterDerivatives(t, y, dfdtheta, stride);
  }
}
