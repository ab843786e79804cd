package holdcurve.evidence;

import java.util.Arrays;

/**
 * Posterior probabilities of rival models.
 *
 * @param probabilities one a model, in the order given, sum 1 [-]
 * @param standardErrors Monte Carlo standard error of each, from the errors of the log evidences by
 *     first-order propagation, at most 1/2 [-]
 */
public record ModelProbabilities(double[] probabilities, double[] standardErrors) {

  /**
   * @param logEvidences ln Z of each model [nat]; negative infinity rules a model out
   * @param errors standard error of each [nat]; ignored for a model that is ruled out
   * @param logPriors log prior probability of each, up to a common constant [nat]
   */
  public static ModelProbabilities of(double[] logEvidences, double[] errors, double[] logPriors) {
    double[] probabilities = LogSum.normalised(logPosteriors(logEvidences, errors, logPriors));
    double[] standardErrors = new double[probabilities.length];
    for (int i = 0; i < standardErrors.length; i++) {
      double variance = 0;
      for (int j = 0; j < probabilities.length; j++) {
        double slope = probabilities[i] * ((i == j ? 1 : 0) - probabilities[j]);
        variance += slope == 0 ? 0 : slope * slope * errors[j] * errors[j];
      }
      standardErrors[i] = Math.min(Math.sqrt(variance), 0.5);
    }
    return new ModelProbabilities(probabilities, standardErrors);
  }

  private static double[] logPosteriors(double[] logEvidences, double[] errors, double[] priors) {
    int n = logEvidences.length;
    if (n == 0 || errors.length != n || priors.length != n) {
      throw new IllegalArgumentException(
          String.format("%d evidences, %d errors, %d priors", n, errors.length, priors.length));
    }
    double[] sum = new double[n];
    for (int i = 0; i < n; i++) {
      sum[i] = logEvidences[i] + priors[i];
      boolean ruledOut = sum[i] == Double.NEGATIVE_INFINITY;
      if (!ruledOut && !(Double.isFinite(sum[i]) && errors[i] >= 0)) {
        throw new IllegalArgumentException(
            String.format(
                "model %d: log evidence %s nat, error %s nat, log prior %s nat",
                i, logEvidences[i], errors[i], priors[i]));
      }
    }
    if (Arrays.stream(sum).max().orElseThrow() == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("every model is ruled out: no probabilities exist");
    }
    return sum;
  }
}
