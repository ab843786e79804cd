package holdcurve.inference.fit;

/**
 * The posterior of coordinates x in which curves are linear, at given scales.
 *
 * @param from where the curves were looked at [-]
 * @param mean posterior mean of x [-]
 * @param logMarginal log likelihood with x integrated out [nat]
 * @param rise of the log posterior from there to the mean, as straight curves promise it [nat]
 */
record Conditional(double[] from, double[] mean, double logMarginal, double rise) {
  /**
   * The same with the mean only so far away that the promised rise is {@code most}, and no more of
   * it in the marginal.
   */
  Conditional believed(double most) {
    if (rise <= most) {
      return this;
    }
    double part = 1 - Math.sqrt(1 - most / rise);
    double[] nearer = from.clone();
    for (int k = 0; k < nearer.length; k++) {
      nearer[k] += part * (mean[k] - from[k]);
    }
    return new Conditional(from, nearer, logMarginal - (rise - most), most);
  }
}
