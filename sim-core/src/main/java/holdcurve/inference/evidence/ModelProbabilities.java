package holdcurve.inference.evidence;

import java.util.Arrays;

/** Posterior probabilities of rival models. */
public final class ModelProbabilities {
  private ModelProbabilities() {}

  /**
   * @param logEvidences ln Z of each model [nat]; negative infinity rules a model out
   * @param logPriors log prior probability of each, up to a common constant [nat]
   * @return one a model, in the order given, sum 1 [-]
   */
  public static double[] of(double[] logEvidences, double[] logPriors) {
    int n = logEvidences.length;
    if (n == 0 || logPriors.length != n) {
      throw new IllegalArgumentException(
          String.format("%d evidences, %d priors", n, logPriors.length));
    }
    double[] sum = new double[n];
    for (int i = 0; i < n; i++) {
      sum[i] = logEvidences[i] + logPriors[i];
      if (Double.isNaN(sum[i]) || sum[i] == Double.POSITIVE_INFINITY) {
        throw new IllegalArgumentException(
            String.format(
                "model %d: log evidence %s nat, log prior %s nat",
                i, logEvidences[i], logPriors[i]));
      }
    }
    double top = Arrays.stream(sum).max().orElseThrow();
    if (top == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("every model is ruled out: no probabilities exist");
    }
    double[] odds = Arrays.stream(sum).map(log -> Math.exp(log - top)).toArray();
    double all = Arrays.stream(odds).sum();
    return Arrays.stream(odds).map(one -> one / all).toArray();
  }
}
