package holdcurve.physics.ode;

/** Values inside one step from its two ends and the vectors K of {@link RosenbrockTableau}. */
final class DenseOutput {
  private DenseOutput() {}

  /**
   * @param theta place in the step: 0 start, 1 end [-]
   * @param start state at the start
   * @param end state at the end
   * @param dense K_1, K_2 …
   * @param state filled with the state at theta
   */
  static void state(double theta, double[] start, double[] end, double[][] dense, double[] state) {
    for (int i = 0; i < state.length; i++) {
      state[i] = component(theta, start, end, dense, i);
    }
  }

  /** One component of {@link #state}. */
  static double component(double theta, double[] start, double[] end, double[][] dense, int i) {
    double rest = 1 - theta;
    return rest * start[i] + theta * (end[i] + rest * bend(theta, dense, i));
  }

  /** Like {@link #state}, but by time; h is the length of the step with its sign [s]. */
  static void slope(
      double theta, double h, double[] start, double[] end, double[][] dense, double[] slope) {
    for (int i = 0; i < slope.length; i++) {
      double byTheta =
          end[i]
              - start[i]
              + (1 - 2 * theta) * bend(theta, dense, i)
              + theta * (1 - theta) * bendSlope(theta, dense, i);
      slope[i] = byTheta / h;
    }
  }

  private static double bend(double theta, double[][] dense, int i) {
    double sum = 0;
    for (int l = dense.length - 1; l >= 0; l--) {
      sum = dense[l][i] + theta * sum;
    }
    return sum;
  }

  private static double bendSlope(double theta, double[][] dense, int i) {
    double sum = 0;
    for (int l = dense.length - 1; l >= 1; l--) {
      sum = l * dense[l][i] + theta * sum;
    }
    return sum;
  }
}
