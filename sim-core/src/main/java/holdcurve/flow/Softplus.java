package holdcurve.flow;

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
    return z > 0 ? z + Math.log1p(Math.exp(-z)) : Math.log1p(Math.exp(z));
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
