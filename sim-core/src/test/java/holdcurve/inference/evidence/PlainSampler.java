package holdcurve.inference.evidence;

import java.util.function.ToDoubleFunction;

/** A log likelihood from a formula. */
record PlainSampler(int dimension, ToDoubleFunction<double[]> value) implements LogLikelihood {
  static LogLikelihood of(int dimension, ToDoubleFunction<double[]> value) {
    return new PlainSampler(dimension, value);
  }

  @Override
  public double logLikelihood(double[] u) {
    return value.applyAsDouble(u);
  }
}
