package holdcurve.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * A local maximum of the posterior density and the curvature there.
 *
 * @param u place of the mode [-]
 * @param logLikelihood true log likelihood at the mode [nat]
 * @param hessian Gauss–Newton Hessian of the negative log posterior, JᵀJ + I, d by d [-]
 * @param cholesky lower triangular G with G Gᵀ = hessian [-]
 * @param converged whether the search met its tolerance
 */
public record Mode(
    double[] u, double logLikelihood, double[][] hessian, double[][] cholesky, boolean converged) {

  /** Laplace's approximation of this mode's share of the log evidence [nat]. */
  public double laplaceLogEvidence() {
    double halfLogDeterminant = 0;
    for (int i = 0; i < u.length; i++) {
      halfLogDeterminant += Math.log(cholesky[i][i]);
    }
    return logPosterior() - halfLogDeterminant;
  }

  /** Log likelihood plus log prior, without the prior's constant [nat]. */
  double logPosterior() {
    return logLikelihood - 0.5 * LogSum.squaredNorm(u);
  }

  /**
   * Equally weighted draws from the Gaussian about the mode, the mode itself first.
   *
   * @param count at least one
   */
  public WeightedDraws draws(long seed, int count) {
    RandomGenerator random = new Well19937c(seed);
    List<double[]> draws = new ArrayList<>(List.of(u));
    while (draws.size() < count) {
      draws.add(away(Gaussians.vector(random, u.length)));
    }
    double[] weights = new double[count];
    Arrays.fill(weights, 1.0 / count);
    return new WeightedDraws(draws, weights);
  }

  /** u + G⁻ᵀ z. */
  private double[] away(double[] z) {
    double[] v = z;
    for (int i = v.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < v.length; k++) {
        v[i] -= cholesky[k][i] * v[k];
      }
      v[i] /= cholesky[i][i];
    }
    for (int i = 0; i < v.length; i++) {
      v[i] += u[i];
    }
    return v;
  }

  /** Standard deviation of one coordinate in the Gaussian about the mode, ‖G⁻¹ e_k‖ [-]. */
  public double deviation(int k) {
    double[] solved = new double[u.length];
    double sum = 0;
    for (int i = k; i < u.length; i++) {
      double right = i == k ? 1 : 0;
      for (int j = k; j < i; j++) {
        right -= cholesky[i][j] * solved[j];
      }
      solved[i] = right / cholesky[i][i];
      sum += solved[i] * solved[i];
    }
    return Math.sqrt(sum);
  }

  /** Distance of a point from the mode in posterior standard deviations, ‖Gᵀ(v − u)‖ [-]. */
  public double distance(double[] v) {
    double sum = 0;
    for (int j = 0; j < u.length; j++) {
      double along = 0;
      for (int i = j; i < u.length; i++) {
        along += cholesky[i][j] * (v[i] - u[i]);
      }
      sum += along * along;
    }
    return Math.sqrt(sum);
  }
}
