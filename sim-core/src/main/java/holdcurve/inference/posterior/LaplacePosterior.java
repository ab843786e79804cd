package holdcurve.inference.posterior;

import holdcurve.inference.fit.Fit;
import holdcurve.inference.likelihood.Latents;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * The posterior of a hypothesis about its best fit, Gaussian as in Laplace's approximation: the two
 * scales of the readings by their own marginal, all other coordinates given the scales.
 */
public final class LaplacePosterior {
  private final Fit fit;
  private final int[] curve;
  private final int[] scales;

  /** Covariance of the scales; lower triangle of its Cholesky factor [-]. */
  private final double[][] scaleCovariance;

  private final double[][] scaleFactor;

  LaplacePosterior(Fit fit, Latents latents) {
    this.fit = fit;
    curve = latents.curve();
    scales = latents.scales();
    double[][] h = fit.scales().hessian();
    double determinant = h[0][0] * h[1][1] - h[0][1] * h[1][0];
    scaleCovariance =
        new double[][] {
          {h[1][1] / determinant, -h[0][1] / determinant},
          {-h[1][0] / determinant, h[0][0] / determinant}
        };
    double first = Math.sqrt(scaleCovariance[0][0]);
    double mixed = scaleCovariance[1][0] / first;
    scaleFactor = new double[][] {{first}, {mixed, Math.sqrt(1 / (h[1][1]))}};
  }

  /** All coordinates where the hypothesis fits best; not to be changed [-]. */
  public double[] mode() {
    return fit.u();
  }

  /** Laplace's approximation of the log evidence [nat]. */
  public double logEvidence() {
    return fit.logEvidence();
  }

  /**
   * Posterior standard deviation of a coordinate that changes the curve [-].
   *
   * @param coordinate its place among all
   */
  public double deviation(int coordinate) {
    int k = 0;
    while (curve[k] != coordinate) {
      k++;
    }
    double variance = fit.factor().variance(k);
    double[][] drift = fit.scales().drift();
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        variance += drift[i][k] * scaleCovariance[i][j] * drift[j][k];
      }
    }
    return Math.sqrt(variance);
  }

  /**
   * Draws of all coordinates, in pairs on opposite sides of the mode: means of what is nearly
   * linear in the coordinates then hardly depend on the seed.
   */
  public List<double[]> draws(long seed, int count) {
    RandomGenerator random = new Well19937c(seed);
    List<double[]> draws = new ArrayList<>(count);
    while (draws.size() < count) {
      double[] away = away(random);
      draws.add(beside(away, 1));
      if (draws.size() < count) {
        draws.add(beside(away, -1));
      }
    }
    return draws;
  }

  private double[] beside(double[] away, int side) {
    double[] u = fit.u().clone();
    for (int j = 0; j < u.length; j++) {
      u[j] += side * away[j];
    }
    return u;
  }

  private double[] away(RandomGenerator random) {
    double z = random.nextGaussian();
    double first = scaleFactor[0][0] * z;
    double second = scaleFactor[1][0] * z + scaleFactor[1][1] * random.nextGaussian();
    double[] rest = new double[curve.length];
    for (int k = 0; k < rest.length; k++) {
      rest[k] = random.nextGaussian();
    }
    fit.factor().forward(rest);
    double[] away = new double[fit.u().length];
    away[scales[0]] = first;
    away[scales[1]] = second;
    double[][] drift = fit.scales().drift();
    for (int k = 0; k < rest.length; k++) {
      away[curve[k]] = rest[k] + drift[0][k] * first + drift[1][k] * second;
    }
    return away;
  }
}
