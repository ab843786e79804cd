package holdcurve.physics.ode;

import java.util.Arrays;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * Equations y' = f(t, y) that also know their derivatives, as a linearly implicit method needs
 * them.
 *
 * <p>The arrays handed in belong to the integrator and are used again: an implementation writes
 * every entry and keeps no reference.
 */
public interface StiffEquations extends FirstOrderDifferentialEquations {

  /**
   * The Jacobian of the right side.
   *
   * @param t time [s]
   * @param y state, one entry a component [unit of the component]
   * @param dfdy filled with ∂f_i/∂y_j in row i, column j; n rows of n [unit of i / (s · unit of
   *     j)]; every entry is written, zeros too
   */
  void computeJacobian(double t, double[] y, double[][] dfdy);

  /** {@link #computeDerivatives} and {@link #computeJacobian} where they share work. */
  default void linearize(double t, double[] y, double[] slope, double[][] dfdy) {
    computeDerivatives(t, y, slope);
    computeJacobian(t, y, dfdy);
  }

  /**
   * The derivative of the right side by time at fixed state. Equations that override this override
   * {@link #isAutonomous} as well.
   *
   * @param t time [s]
   * @param y state
   * @param dfdt filled with ∂f_i/∂t, n entries [unit of i / s²]
   */
  default void computeTimeDerivative(double t, double[] y, double[] dfdt) {
    Arrays.fill(dfdt, 0);
  }

  /**
   * Whether time stands nowhere in the right side. When true, {@link #computeTimeDerivative} is
   * never called.
   */
  default boolean isAutonomous() {
    return true;
  }

  /**
   * Whether a step between two states would jump over a narrow place where the right side bends
   * sharply, such as a valve that shuts within a small range of pressure: the stages of the step
   * may all miss it, and then the error estimate does too. Such a step is tried again shorter.
   *
   * @param from state at the start of a step
   * @param to state at its end
   */
  default boolean jumpsOver(double[] from, double[] to) {
    return false;
  }
}
