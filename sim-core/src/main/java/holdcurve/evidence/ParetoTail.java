package holdcurve.evidence;

import java.util.Arrays;

/**
 * Fit of a generalised Pareto distribution to exceedances, and the shape k of importance weights.
 *
 * <p>The fit is that of Zhang and Stephens, "A new and efficient estimation method for the
 * generalized Pareto distribution", Technometrics 51 (2009) 316; with k counted positive for heavy
 * tails, the weakly informative prior on k, the tail size and the limits of Vehtari, Simpson,
 * Gelman, Yao and Gabry, "Pareto smoothed importance sampling", Journal of Machine Learning
 * Research 25 (2024) 72.
 *
 * @param shape k; moments of order below 1/k exist [-]
 * @param scale σ, in the unit of the exceedances
 */
public record ParetoTail(double shape, double scale) {

  /**
   * @param exceedances at least 5 positive finite values, any order
   * @return fitted shape and scale, without the prior on k
   */
  public static ParetoTail fit(double[] exceedances) {
    double[] x = exceedances.clone();
    Arrays.sort(x);
    int n = x.length;
    if (n < 5 || !(x[0] >= 0) || !(x[n - 1] > 0) || Double.isInfinite(x[n - 1])) {
      throw new IllegalArgumentException(
          "a Pareto tail needs at least 5 positive finite exceedances, got " + n);
    }
    double theta = profileMean(x);
    double k = meanLog(theta, x);
    return new ParetoTail(k, -k / theta);
  }

  /** Posterior mean of θ = −k/σ over the grid of the paper's section 4, weights by likelihood. */
  private static double profileMean(double[] x) {
    int n = x.length;
    int grid = 30 + (int) Math.sqrt(n);
    double quartile = Math.max(x[(int) (n / 4.0 + 0.5) - 1], 1e-12 * x[n - 1]);
    double[] theta = new double[grid];
    double[] logLikelihood = new double[grid];
    for (int j = 0; j < grid; j++) {
      theta[j] = 1 / x[n - 1] + (1 - Math.sqrt(grid / (j + 0.5))) / (3 * quartile);
      double k = meanLog(theta[j], x);
      logLikelihood[j] = n * (Math.log(-theta[j] / k) - k - 1);
    }
    double[] weight = LogSum.normalised(logLikelihood);
    double mean = 0;
    for (int j = 0; j < grid; j++) {
      mean += weight[j] * theta[j];
    }
    return mean;
  }

  private static double meanLog(double theta, double[] x) {
    double sum = 0;
    for (double value : x) {
      sum += Math.log1p(-theta * value);
    }
    return sum / x.length;
  }

  /**
   * Pareto k̂ of importance weights, from the largest min(S/5, 3√S) of them.
   *
   * @param logWeights log weights up to a constant, negative infinity allowed [nat]
   * @return k̂; negative infinity when the tail is flat (equal weights), positive infinity when
   *     fewer than 10 weights are positive
   */
  public static double ofWeights(double[] logWeights) {
    double[] sorted = Arrays.stream(logWeights).filter(w -> w > Double.NEGATIVE_INFINITY).toArray();
    Arrays.sort(sorted);
    int s = logWeights.length;
    int tail = (int) Math.ceil(Math.min(0.2 * s, 3 * Math.sqrt(s)));
    if (sorted.length < 10 || sorted.length <= tail || tail < 5) {
      return Double.POSITIVE_INFINITY;
    }
    double top = sorted[sorted.length - 1];
    double cutoff = Math.exp(sorted[sorted.length - tail - 1] - top);
    double[] exceedances = new double[tail];
    for (int i = 0; i < tail; i++) {
      exceedances[i] = Math.exp(sorted[sorted.length - tail + i] - top) - cutoff;
    }
    if (!(exceedances[tail - 1] > 1e-12)) {
      return Double.NEGATIVE_INFINITY;
    }
    return (fit(exceedances).shape * tail + 0.5 * 10) / (tail + 10);
  }

  /** Largest k̂ at which S draws still give a usable estimate: min(1 − 1/log₁₀ S, 0.7) [-]. */
  public static double limit(int draws) {
    return Math.min(1 - 1 / Math.log10(draws), 0.7);
  }
}
