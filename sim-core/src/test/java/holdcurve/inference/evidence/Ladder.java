package holdcurve.inference.evidence;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * Polynomial of a given degree through 8 points with known error: the evidence has a closed form.
 */
public final class Ladder implements LogLikelihood {
  private static final JsonNode CASE =
      ReferenceEvidence.json("evidence_benchmarks.json").get("linear_gaussian");
  private final double[] x = ReferenceEvidence.numbers(CASE.get("x"));
  private final double[] y = ReferenceEvidence.numbers(CASE.get("y"));
  private final double sigma = CASE.get("sigma").asDouble();
  private final int degree;

  /** A polynomial with coefficients of one more than its degree. */
  public Ladder(int degree) {
    this.degree = degree;
  }

  /** In closed form [nat]. */
  public static double logEvidence(int degree) {
    return CASE.get("models").get(Integer.toString(degree)).get("logZ").asDouble();
  }

  /** Of four degrees, all as likely beforehand [-]. */
  public static double[] probabilities() {
    return ReferenceEvidence.numbers(CASE.get("equal_prior_probabilities"));
  }

  /** Of each coefficient. */
  public static double[] posteriorMean(int degree) {
    return ReferenceEvidence.numbers(CASE.get("models").get("" + degree).get("posterior_mean"));
  }

  /** Of each coefficient. */
  public static double[] posteriorDeviation(int degree) {
    return ReferenceEvidence.numbers(CASE.get("models").get("" + degree).get("posterior_sd"));
  }

  @Override
  public int dimension() {
    return degree + 1;
  }

  /** Residuals of the points over their error, one a point [-]. */
  public double[] residuals(double[] u) {
    double[] out = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      double value = 0;
      for (int k = degree; k >= 0; k--) {
        value = value * x[i] / 7 + u[k];
      }
      out[i] = (y[i] - value) / sigma;
    }
    return out;
  }

  /** Log density of the points less that of their residuals [nat]. */
  public double logScale() {
    return -x.length * Math.log(sigma);
  }

  @Override
  public double logLikelihood(double[] u) {
    return -0.5 * LogSum.squaredNorm(residuals(u))
        - 0.5 * x.length * LogSum.LOG_TWO_PI
        + logScale();
  }
}
