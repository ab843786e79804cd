package holdcurve.infer;

import holdcurve.evidence.LogLikelihood;

/** A likelihood that stops when the user does. */
record WatchedMarginal(LogLikelihood inner, Progress progress) implements LogLikelihood {
  @Override
  public int dimension() {
    return inner.dimension();
  }

  @Override
  public double logLikelihood(double[] u) {
    Workers.stopIfCancelled(progress);
    return inner.logLikelihood(u);
  }
}
