package holdcurve.inference.fit;

/**
 * A place where a hypothesis fits the readings best, and how sharply.
 *
 * @param u all coordinates: the scales where they are likeliest with the rest integrated out, the
 *     rest where it is likeliest at these scales [-]
 * @param precision posterior precision of those at these scales [-]
 * @param factor of that precision
 * @param scales what is known of the scales
 * @param sensitivities of residuals by the curve coordinates there, one row a residual
 * @param logPosterior log of likelihood and prior with all coordinates but the scales integrated
 *     out, constants of the prior left out [nat]
 */
public record Fit(
    double[] u,
    double[][] precision,
    Cholesky factor,
    ScaleMode scales,
    double[][] sensitivities,
    double logPosterior) {
  /** Laplace's approximation of the log evidence that lies here [nat]. */
  public double logEvidence() {
    double[][] h = scales.hessian();
    return logPosterior - 0.5 * Math.log(h[0][0] * h[1][1] - h[0][1] * h[1][0]);
  }

  /**
   * Squared distance of a place in posterior standard deviations, whatever the scales.
   *
   * @param here curve coordinates of this fit [-]
   * @param there of the other place [-]
   */
  double squaredDistance(double[] here, double[] there) {
    double sum = 0;
    for (int i = 0; i < here.length; i++) {
      for (int j = 0; j < here.length; j++) {
        sum += (there[i] - here[i]) * precision[i][j] * (there[j] - here[j]);
      }
    }
    return sum;
  }

  /** Sensitivities of all residuals by one curve coordinate. */
  double[] column(int k) {
    double[] column = new double[sensitivities.length];
    for (int i = 0; i < column.length; i++) {
      column[i] = sensitivities[i][k];
    }
    return column;
  }
}
