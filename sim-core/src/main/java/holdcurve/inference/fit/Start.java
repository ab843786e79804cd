package holdcurve.inference.fit;

/**
 * Where a search begins.
 *
 * @param u over all coordinates [-]
 * @param sensitivities of residuals by each coordinate, known well enough from a fit nearby, one a
 *     reading; null where they are to be simulated
 */
public record Start(double[] u, double[][] sensitivities) {
  /** Where nothing is known yet. */
  public static Start of(double[] u) {
    return new Start(u, new double[u.length][]);
  }
}
