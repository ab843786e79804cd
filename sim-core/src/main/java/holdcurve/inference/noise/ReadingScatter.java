package holdcurve.inference.noise;

/**
 * How readings scatter about a curve.
 *
 * @param offset error common to all readings of the gauge [Pa]
 * @param deviation of one reading about the true needle, rounding included [Pa]
 * @param modelError amplitude of the model's own smooth error [Pa]
 */
public record ReadingScatter(double offset, double deviation, double modelError) {
  /**
   * Covariance of readings about a curve; the offset is no part of it [Pa²].
   *
   * @param times of the readings [s]
   */
  public double[][] covariance(double[] times) {
    double[][] shapes = DiscrepancyBasis.at(times);
    double[][] covariance = new double[times.length][times.length];
    for (int i = 0; i < times.length; i++) {
      for (int j = 0; j < times.length; j++) {
        double dot = 0;
        for (int k = 0; k < shapes[i].length; k++) {
          dot += shapes[i][k] * shapes[j][k];
        }
        covariance[i][j] = modelError * modelError * dot;
      }
      covariance[i][i] += deviation * deviation;
    }
    return covariance;
  }
}
