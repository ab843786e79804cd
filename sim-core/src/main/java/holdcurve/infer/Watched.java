package holdcurve.infer;

import holdcurve.evidence.ResidualLikelihood;

/** A likelihood that stops when the user does. */
record Watched(ResidualLikelihood inner, Progress progress) implements ResidualLikelihood {
  @Override
  public int dimension() {
    return inner.dimension();
  }

  @Override
  public int residualCount() {
    return inner.residualCount();
  }

  @Override
  public double residuals(double[] u, double[] out) {
    Judge.stopIfCancelled(progress);
    return inner.residuals(u, out);
  }

  @Override
  public boolean jacobian(double[] u, double[][] out) {
    Judge.stopIfCancelled(progress);
    return inner.jacobian(u, out);
  }

  @Override
  public double differenceStep() {
    return inner.differenceStep();
  }
}
