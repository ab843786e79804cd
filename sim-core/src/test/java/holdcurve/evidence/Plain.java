package holdcurve.evidence;

import java.util.function.ToDoubleFunction;

/** A log likelihood without residuals. */
record Plain(int dimension, ToDoubleFunction<double[]> value) implements LogLikelihood {
  static LogLikelihood of(int dimension, ToDoubleFunction<double[]> value) {
    return new Plain(dimension, value);
  }

  static LogLikelihood of(LogLikelihood other) {
    return new Plain(other.dimension(), other::logLikelihood);
  }

  @Override
  public double logLikelihood(double[] u) {
    return value.applyAsDouble(u);
  }
}
