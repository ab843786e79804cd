package holdcurve.physics.network;

/**
 * Something that moves fluid between nodes or carries states of its own. Elements know their nodes
 * and state rows; the network knows no element by kind.
 *
 * <p>While the network collects, row i of a node's pressure holds the net volume flow into that
 * node [m³/s]; the network divides by the node's capacity [m³/Pa] afterwards. Rows of an element's
 * own states hold their time derivative as it is.
 */
public interface Element {
  /**
   * Adds this element's flows and rates.
   *
   * @param t time [s]
   * @param y state, length of the network's dimension
   * @param rates collected so far; added to
   */
  void addRates(double t, double[] y, double[] rates);

  /**
   * Adds the partial derivatives of what {@link #addRates} adds.
   *
   * @param jacobian square, {@code jacobian[i][j]} = ∂rates[i]/∂y[j]; added to
   */
  void addJacobian(double t, double[] y, double[][] jacobian);

  /**
   * Adds the explicit time derivative of what {@link #addRates} adds; nothing for an element that
   * doesn't know the time.
   */
  default void addTimeDerivative(double t, double[] y, double[] derivative) {}

  /**
   * Whether {@link #addRates} adds A y + b with an A and a b that never change. Such elements are
   * evaluated once, when the network is built.
   */
  default boolean isLinear() {
    return false;
  }

  /** See {@link holdcurve.physics.ode.StiffEquations#jumpsOver}. */
  default boolean jumpsOver(double[] from, double[] to) {
    return false;
  }

  /** What to call it in a message, such as "leak from rail to air". */
  String name();
}
