package holdcurve.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A proposal: a defensive part, which never shrinks (Hesterberg, Technometrics 37 (1995) 185), and
 * Student pieces that follow the posterior.
 *
 * @param components the defensive ones first
 * @param weights mixture weights, sum 1 [-]
 * @param defensive number of defensive components [-]
 */
record Mixture(List<Component> components, double[] weights, int defensive) {
  static final double FREEDOM = 5;
  private static final double PRIOR_WEIGHT = 0.05;
  private static final double WIDE_WEIGHT = 0.2;

  /** Widening of the Laplace scale matrix: real tails are seldom thinner [-]. */
  private static final double WIDENING = 1.3;

  /** Power of the likelihood whose Laplace shape the wide pieces have [-]. */
  private static final double WIDE_POWER = 0.25;

  /** No following piece gets less than this share before scaling to sum 1 [-]. */
  private static final double SMALLEST_SHARE = 0.05;

  private static final int MOST_MODES = 6;

  /**
   * The first proposal: on each mode a Student piece sized by its Laplace share, and a wide one.
   */
  static Mixture at(List<Mode> modes, int dimension) {
    List<Mode> used = modes.subList(0, Math.min(MOST_MODES, modes.size()));
    List<Component> wide = new ArrayList<>();
    List<Component> close = new ArrayList<>();
    for (Mode mode : used) {
      wide.add(Component.student(mode.u(), laplaceScale(mode.hessian(), WIDE_POWER), FREEDOM));
      close.add(aroundPoint(mode.u(), mode.hessian()));
    }
    double[] shares =
        LogSum.normalised(used.stream().mapToDouble(Mode::laplaceLogEvidence).toArray());
    return of(dimension, wide, close, shares);
  }

  /** A Student piece with the slightly widened shape of a Gauss–Newton Hessian. */
  static Component aroundPoint(double[] u, double[][] hessian) {
    double[][] scale = Gaussians.inverse(hessian);
    for (double[] row : scale) {
      for (int j = 0; j < row.length; j++) {
        row[j] *= WIDENING;
      }
    }
    return Component.student(u, scale, FREEDOM);
  }

  /** Inverse of power · JᵀJ + I. */
  private static double[][] laplaceScale(double[][] hessian, double power) {
    double[][] flat = new double[hessian.length][hessian.length];
    for (int i = 0; i < flat.length; i++) {
      for (int j = 0; j < flat.length; j++) {
        flat[i][j] = power * hessian[i][j] + (i == j ? 1 - power : 0);
      }
    }
    return Gaussians.inverse(flat);
  }

  static Mixture of(
      int dimension, List<Component> wide, List<Component> following, double[] shares) {
    List<Component> components = new ArrayList<>();
    components.add(Component.prior(dimension));
    components.addAll(wide);
    components.addAll(following);
    double[] weights = new double[components.size()];
    Arrays.fill(weights, 1, 1 + wide.size(), WIDE_WEIGHT / wide.size());
    weights[0] = PRIOR_WEIGHT;
    double total = Arrays.stream(shares).map(s -> Math.max(s, SMALLEST_SHARE)).sum();
    double left = 1 - PRIOR_WEIGHT - WIDE_WEIGHT;
    for (int k = 0; k < shares.length; k++) {
      weights[1 + wide.size() + k] = left * Math.max(shares[k], SMALLEST_SHARE) / total;
    }
    return new Mixture(components, weights, 1 + wide.size());
  }

  /** Numbers of mirrored pairs per component for about {@code draws} draws, at least 2 each. */
  int[] pairs(int draws) {
    int[] counts = new int[weights.length];
    for (int k = 0; k < counts.length; k++) {
      counts[k] = (int) Math.max(2, Math.round(0.5 * draws * weights[k]));
    }
    return counts;
  }
}
