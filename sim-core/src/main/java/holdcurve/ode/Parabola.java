package holdcurve.ode;

/**
 * A vector that changes over a step as the parabola through its values at start, middle and end.
 */
final class Parabola {
  private double[] start;
  private final double[] middle;
  private double[] end;
  private final double[] at;

  Parabola(int length) {
    start = new double[length];
    middle = new double[length];
    end = new double[length];
    at = new double[length];
  }

  /** Values at the start of the step; to be filled. */
  double[] start() {
    return start;
  }

  double[] middle() {
    return middle;
  }

  double[] end() {
    return end;
  }

  /** What {@link #evaluate} or {@link #differentiate} has computed. */
  double[] at() {
    return at;
  }

  /** Makes the end of this step the start of the next. */
  void shift() {
    double[] old = start;
    start = end;
    end = old;
  }

  /**
   * Computes the values at a place in the step.
   *
   * @param theta 0 start, 1 end [-]
   * @param count how many leading entries matter
   */
  void evaluate(double theta, int count) {
    double byStart = (1 - theta) * (1 - 2 * theta);
    double byMiddle = 4 * theta * (1 - theta);
    double byEnd = theta * (2 * theta - 1);
    combine(byStart, byMiddle, byEnd, count);
  }

  /** Computes the derivatives by theta at the start. */
  void differentiate(int count) {
    combine(-3, 4, -1, count);
  }

  private void combine(double byStart, double byMiddle, double byEnd, int count) {
    for (int e = 0; e < count; e++) {
      at[e] = byStart * start[e] + byMiddle * middle[e] + byEnd * end[e];
    }
  }
}
