package holdcurve.inference.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * A local maximum of the posterior density, the curvature there, and the evidence that lies there.
 *
 * @param u place of the mode [-]
 * @param logEvidence Laplace's approximation of this mode's share of ln Z [nat]
 * @param cholesky lower triangular G; G Gᵀ is the Hessian of the negative log posterior [-]
 */
public record Mode(double[] u, double logEvidence, double[][] cholesky) {

  /**
   * Equally weighted draws from the Gaussian about the mode, the mode itself first.
   *
   * @param count at least one
   */
  public WeightedDraws draws(long seed, int count) {
    RandomGenerator random = new Well19937c(seed);
    List<double[]> draws = new ArrayList<>(List.of(u));
    while (draws.size() < count) {
      double[] z = new double[u.length];
      for (int i = 0; i < z.length; i++) {
        z[i] = random.nextGaussian();
      }
      draws.add(away(z));
    }
    double[] weights = new double[count];
    Arrays.fill(weights, 1.0 / count);
    return new WeightedDraws(draws, weights);
  }

  /** u + G⁻ᵀ z; overwrites z. */
  private double[] away(double[] z) {
    for (int i = z.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < z.length; k++) {
        z[i] -= cholesky[k][i] * z[k];
      }
      z[i] /= cholesky[i][i];
    }
    for (int i = 0; i < z.length; i++) {
      z[i] += u[i];
    }
    return z;
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
