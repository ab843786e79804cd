package holdcurve.evidence;

/** Jacobian of the residuals: the model's own, or differences. */
final class ResidualSlope {
  private final CountedLikelihood likelihood;
  private final int residualCount;
  private final double step;

  ResidualSlope(CountedLikelihood likelihood) {
    this.likelihood = likelihood;
    this.residualCount = likelihood.residualForm().residualCount();
    this.step = likelihood.residualForm().differenceStep();
  }

  /**
   * @param u place of the slope [-]
   * @param residuals residuals at u [-]
   * @return dr_i/du_j, residuals by coordinates [-]
   */
  double[][] at(double[] u, double[] residuals) {
    double[][] slope = new double[residualCount][u.length];
    if (!likelihood.jacobian(u, slope)) {
      for (int j = 0; j < u.length; j++) {
        differences(u, residuals, j, slope);
      }
    }
    return slope;
  }

  /** Forward; backward where the model fails ahead; a zero column where it fails on both sides. */
  private void differences(double[] u, double[] residuals, int j, double[][] slope) {
    double forward = step * Math.max(1, Math.abs(u[j]));
    if (!oneSided(u, residuals, j, forward, slope)) {
      oneSided(u, residuals, j, -forward, slope);
    }
  }

  private boolean oneSided(double[] u, double[] base, int j, double change, double[][] slope) {
    double[] moved = u.clone();
    moved[j] += change;
    double[] there = new double[residualCount];
    likelihood.residuals(moved, there);
    boolean finite = Double.isFinite(LogSum.squaredNorm(there));
    for (int i = 0; i < residualCount; i++) {
      slope[i][j] = finite ? (there[i] - base[i]) / (moved[j] - u[j]) : 0;
    }
    return finite;
  }
}
