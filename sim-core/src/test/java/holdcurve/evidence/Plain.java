package holdcurve.evidence;

import java.util.function.ToDoubleFunction;

/** A log likelihood from a formula. */
record Plain(int dimension, ToDoubleFunction<double[]> value) implements LogLikelihood {
  static LogLikelihood of(int dimension, ToDoubleFunction<double[]> value) {
    return new Plain(dimension, value);
  }

  @Override
  public double logLikelihood(double[] u) {
    return value.applyAsDouble(u);
  }
}
