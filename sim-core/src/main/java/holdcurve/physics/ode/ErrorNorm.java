package holdcurve.physics.ode;

/** Measures vectors against the tolerances: 1 stands for "just allowed". */
final class ErrorNorm {
  private final Tolerances tolerances;

  ErrorNorm(Tolerances tolerances) {
    this.tolerances = tolerances;
  }

  /** Fills the allowed error of each component at one state. */
  void fillScale(double[] y, double[] scale) {
    for (int i = 0; i < y.length; i++) {
      scale[i] = tolerances.scale(i, Math.abs(y[i]));
    }
  }

  /** Root mean square of the errors of a step, each over what is allowed at its larger end. */
  double ofStep(double[] error, double[] start, double[] end) {
    double sum = 0;
    for (int i = 0; i < error.length; i++) {
      double ratio = ratio(i, error, start, end);
      sum += ratio * ratio;
    }
    return Math.sqrt(sum / error.length);
  }

  /** Component with the largest error over what is allowed; the first that is not finite if any. */
  int worst(double[] error, double[] start, double[] end) {
    int worst = 0;
    double largest = -1;
    for (int i = 0; i < error.length; i++) {
      double ratio = Math.abs(ratio(i, error, start, end));
      if (!Double.isFinite(ratio)) {
        return i;
      }
      if (ratio > largest) {
        largest = ratio;
        worst = i;
      }
    }
    return worst;
  }

  private double ratio(int i, double[] error, double[] start, double[] end) {
    return error[i] / tolerances.scale(i, Math.max(Math.abs(start[i]), Math.abs(end[i])));
  }

  /** Root mean square of a vector over a scale. */
  static double rms(double[] vector, double[] scale) {
    double sum = 0;
    for (int i = 0; i < vector.length; i++) {
      double ratio = vector[i] / scale[i];
      sum += ratio * ratio;
    }
    return Math.sqrt(sum / vector.length);
  }
}
