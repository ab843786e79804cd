package holdcurve.evidence;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.special.Gamma;

/**
 * One multivariate Student or normal piece of a proposal.
 *
 * @param location centre [-]
 * @param scale scale matrix, symmetric positive definite [-]
 * @param lower lower triangular factor of the scale matrix [-]
 * @param freedom degrees of freedom; positive infinity for a normal piece [-]
 */
record Component(double[] location, double[][] scale, double[][] lower, double freedom) {

  static Component student(double[] location, double[][] scale, double freedom) {
    return new Component(location, scale, Gaussians.factor(scale), freedom);
  }

  static Component prior(int dimension) {
    double[][] identity = new double[dimension][dimension];
    for (int i = 0; i < dimension; i++) {
      identity[i][i] = 1;
    }
    return new Component(new double[dimension], identity, identity, Double.POSITIVE_INFINITY);
  }

  int dimension() {
    return location.length;
  }

  /**
   * A draw and its mirror image in the centre: odd terms of the integrand cancel in the pair.
   *
   * @param radialShare probability that a draw lies nearer to the centre, in 0 to 1 [-]
   */
  double[][] mirroredPair(RandomGenerator random, double radialShare) {
    double[] z = Gaussians.vector(random, dimension());
    double stretch = radius(radialShare) / Math.sqrt(LogSum.squaredNorm(z));
    return new double[][] {
      Gaussians.affine(location, lower, stretch, z), Gaussians.affine(location, lower, -stretch, z)
    };
  }

  /** Squared radius over d is F(d, ν), or chi-square over d for a normal piece. */
  private double radius(double share) {
    int d = dimension();
    return Math.sqrt(
        Double.isFinite(freedom)
            ? d * new FDistribution(null, d, freedom).inverseCumulativeProbability(share)
            : new ChiSquaredDistribution(null, d).inverseCumulativeProbability(share));
  }

  /** Log density at u; for the Student form see Kotz and Nadarajah (2004), section 1.1. */
  double logDensity(double[] u) {
    int d = dimension();
    double distance = 0;
    double logDeterminant = 0;
    double[] z = new double[d];
    for (int i = 0; i < d; i++) {
      double rest = u[i] - location[i];
      for (int j = 0; j < i; j++) {
        rest -= lower[i][j] * z[j];
      }
      z[i] = rest / lower[i][i];
      distance += z[i] * z[i];
      logDeterminant += Math.log(lower[i][i]);
    }
    return logRadial(distance, d) - logDeterminant;
  }

  private double logRadial(double distance, int d) {
    if (!Double.isFinite(freedom)) {
      return -0.5 * (distance + d * LogSum.LOG_TWO_PI);
    }
    return Gamma.logGamma(0.5 * (freedom + d))
        - Gamma.logGamma(0.5 * freedom)
        - 0.5 * d * Math.log(freedom * Math.PI)
        - 0.5 * (freedom + d) * Math.log1p(distance / freedom);
  }
}
