package holdcurve.evidence;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * Polynomial of a given degree through 8 points with known error: the evidence has a closed form.
 */
final class Ladder implements ResidualLikelihood {
  private static final JsonNode CASE =
      Reference.json("evidence_benchmarks.json").get("linear_gaussian");
  private final double[] x = Reference.numbers(CASE.get("x"));
  private final double[] y = Reference.numbers(CASE.get("y"));
  private final double sigma = CASE.get("sigma").asDouble();
  private final int degree;

  Ladder(int degree) {
    this.degree = degree;
  }

  static double logEvidence(int degree) {
    return CASE.get("models").get(Integer.toString(degree)).get("logZ").asDouble();
  }

  static double[] probabilities() {
    return Reference.numbers(CASE.get("equal_prior_probabilities"));
  }

  static double[] posteriorMean(int degree) {
    return Reference.numbers(CASE.get("models").get("" + degree).get("posterior_mean"));
  }

  static double[] posteriorDeviation(int degree) {
    return Reference.numbers(CASE.get("models").get("" + degree).get("posterior_sd"));
  }

  @Override
  public int dimension() {
    return degree + 1;
  }

  @Override
  public int residualCount() {
    return x.length;
  }

  @Override
  public double residuals(double[] u, double[] out) {
    for (int i = 0; i < x.length; i++) {
      double value = 0;
      for (int k = degree; k >= 0; k--) {
        value = value * x[i] / 7 + u[k];
      }
      out[i] = (y[i] - value) / sigma;
    }
    return -0.5 * LogSum.squaredNorm(out) - x.length * (Math.log(sigma) + 0.5 * LogSum.LOG_TWO_PI);
  }
}
