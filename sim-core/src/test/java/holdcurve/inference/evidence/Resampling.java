package holdcurve.inference.evidence;

/**
 * Systematic resampling (Kitagawa, Journal of Computational and Graphical Statistics 5 (1996) 1).
 */
final class Resampling {
  private Resampling() {}

  /**
   * @param weights not negative, sum 1 [-]
   * @param count number wanted [-]
   * @param shift in [0, 1) [-]
   * @return indices, in rising order
   */
  static int[] systematic(double[] weights, int count, double shift) {
    int[] chosen = new int[count];
    int i = 0;
    double reached = weights[0];
    for (int j = 0; j < count; j++) {
      double wanted = (j + shift) / count;
      while (reached <= wanted && i < weights.length - 1) {
        i++;
        reached += weights[i];
      }
      chosen[j] = weights[i] > 0 ? i : chosen[Math.max(0, j - 1)];
    }
    return chosen;
  }
}
