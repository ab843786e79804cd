package holdcurve.physics.hold;

/**
 * A state with its derivatives by parameters.
 *
 * @param y state, n entries
 * @param s derivatives, ∂y_i/∂θ_k at {@code [i * count + k]}
 * @param count number of parameters
 * @param step by which parameters are moved
 */
record StateSensitivities(double[] y, double[] s, int count, double step) {
  StateSensitivities(double[] y, int count, double step) {
    this(y, new double[y.length * count], count, step);
  }

  /** Sets the derivatives by parameter k from the state with that parameter moved. */
  void setMoved(int k, double[] moved) {
    for (int i = 0; i < y.length; i++) {
      s[i * count + k] = (moved[i] - y[i]) / step;
    }
  }

  /** The state with parameter k moved, to first order. */
  double[] moved(int k) {
    double[] moved = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      moved[i] = y[i] + step * s[i * count + k];
    }
    return moved;
  }
}
