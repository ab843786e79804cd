package holdcurve.inference.fit;

/**
 * The posterior of coordinates x in which curves are linear, with the sampled coordinates fixed.
 *
 * @param from where the curves were looked at [-]
 * @param mean posterior mean of x [-]
 * @param factor Cholesky factorisation of the posterior precision
 * @param logMarginal log likelihood with x integrated out [nat]
 * @param rise of the log posterior from there to the mean, as straight curves promise it [nat]
 */
public record Conditional(
    double[] from, double[] mean, Cholesky factor, double logMarginal, double rise) {
  /** Log likelihood and prior where the curves were looked at, but for a constant [nat]. */
  public double logThere() {
    return logMarginal - rise;
  }

  /**
   * The same with the mean only so far away that the promised rise is {@code most}, and no more of
   * it in the marginal.
   */
  public Conditional believed(double most) {
    if (rise <= most) {
      return this;
    }
    double part = 1 - Math.sqrt(1 - most / rise);
    double[] nearer = from.clone();
    for (int k = 0; k < nearer.length; k++) {
      nearer[k] += part * (mean[k] - from[k]);
    }
    return new Conditional(from, nearer, factor, logMarginal - (rise - most), most);
  }

  /**
   * A draw from the posterior of x.
   *
   * @param normal independent standard-normal numbers, as many as x
   */
  public double[] draw(double[] normal) {
    double[] z = factor.forward(normal.clone());
    for (int i = 0; i < z.length; i++) {
      z[i] += mean[i];
    }
    return z;
  }
}
