package holdcurve.advice.plan;

/**
 * Information in a test whose outcome is one of a few: I = Σ_h p_h Σ_o P(o|h) log₂ P(o|h)/P(o),
 * with P(o|h) averaged over the draws of a hypothesis.
 */
final class SortedOutcomes {
  private final double[] prior;
  private final double[][][] chance;

  /**
   * @param prior probability of each hypothesis [-]
   * @param chance hypothesis, draw, outcome → probability of the outcome [-]; those of a draw add
   *     up to 1
   */
  SortedOutcomes(double[] prior, double[][][] chance) {
    this.prior = prior;
    this.chance = chance;
  }

  /** With an error from how much two halves of the draws differ. */
  Information information() {
    double all = bits(averages(0, 1));
    double halves = Math.abs(bits(averages(0, 2)) - bits(averages(1, 2)));
    return new Information(Math.max(0, all), halves / 2);
  }

  /** Probability of each outcome under each hypothesis [-]. */
  double[][] chances() {
    return averages(0, 1);
  }

  private double[][] averages(int first, int step) {
    double[][] average = new double[prior.length][chance[0][0].length];
    for (int h = 0; h < prior.length; h++) {
      int count = 0;
      for (int i = first; i < chance[h].length; i += step) {
        count++;
        for (int o = 0; o < average[h].length; o++) {
          average[h][o] += chance[h][i][o];
        }
      }
      for (int o = 0; o < average[h].length; o++) {
        average[h][o] /= Math.max(1, count);
      }
    }
    return average;
  }

  private double bits(double[][] average) {
    double sum = 0;
    for (int o = 0; o < average[0].length; o++) {
      double total = 0;
      for (int h = 0; h < prior.length; h++) {
        total += prior[h] * average[h][o];
      }
      for (int h = 0; h < prior.length; h++) {
        double p = average[h][o];
        sum += p > 0 ? prior[h] * p * Math.log(p / total) : 0;
      }
    }
    return Information.bits(sum);
  }
}
