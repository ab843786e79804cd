package holdcurve.inference.evidence;

import java.util.Arrays;

/** Sums of exponentials that neither overflow nor underflow. */
final class LogSum {
  static final double LOG_TWO_PI = Math.log(2 * Math.PI);

  private LogSum() {}

  /** ln Σ exp(x); negative infinity for no terms or none above it. */
  static double of(double[] x) {
    double top = Arrays.stream(x).max().orElse(Double.NEGATIVE_INFINITY);
    if (top == Double.NEGATIVE_INFINITY) {
      return top;
    }
    double sum = 0;
    for (double value : x) {
      sum += Math.exp(value - top);
    }
    return top + Math.log(sum);
  }

  /** ln(exp(a) + exp(b)). */
  static double of(double a, double b) {
    double top = Math.max(a, b);
    return top == Double.NEGATIVE_INFINITY ? top : top + Math.log1p(Math.exp(-Math.abs(a - b)));
  }

  /** exp(x) scaled to sum 1; exact also where the terms share a huge constant. */
  static double[] normalised(double[] x) {
    double top = Arrays.stream(x).max().orElse(Double.NEGATIVE_INFINITY);
    double[] terms = Arrays.stream(x).map(value -> Math.exp(value - top)).toArray();
    double sum = Arrays.stream(terms).sum();
    return Arrays.stream(terms).map(term -> term / sum).toArray();
  }

  static double squaredNorm(double[] u) {
    double sum = 0;
    for (double value : u) {
      sum += value * value;
    }
    return sum;
  }
}
