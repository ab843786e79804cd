package holdcurve.evidence;

import java.util.ArrayList;
import java.util.List;

/**
 * A proposal: the prior as a defensive part (Hesterberg, Technometrics 37 (1995) 185), then Student
 * pieces.
 *
 * @param components the prior first
 * @param weights mixture weights, sum 1 [-]
 */
record Mixture(List<Component> components, double[] weights) {
  static final double FREEDOM = 7;
  private static final double DEFENSIVE_WEIGHT = 0.1;

  /** Widening of the Laplace scale matrix: real tails are seldom thinner [-]. */
  private static final double WIDENING = 1.2;

  /** Modes with less than this share of the Laplace evidence get this share of the draws [-]. */
  private static final double SMALLEST_SHARE = 0.05;

  private static final int MOST_MODES = 8;

  /** The first proposal: a Student piece on each mode, sized by its Laplace share. */
  static Mixture at(List<Mode> modes, int dimension) {
    List<Mode> used = modes.subList(0, Math.min(MOST_MODES, modes.size()));
    List<Component> components = new ArrayList<>();
    components.add(Component.prior(dimension));
    for (Mode mode : used) {
      double[][] scale = Gaussians.inverse(mode.hessian());
      for (double[] row : scale) {
        for (int j = 0; j < row.length; j++) {
          row[j] *= WIDENING;
        }
      }
      components.add(Component.student(mode.u(), scale, FREEDOM));
    }
    double[] shares =
        LogSum.normalised(used.stream().mapToDouble(Mode::laplaceLogEvidence).toArray());
    return new Mixture(components, withDefensivePart(shares));
  }

  static double[] withDefensivePart(double[] shares) {
    double total = 0;
    for (double share : shares) {
      total += Math.max(share, SMALLEST_SHARE);
    }
    double[] weights = new double[shares.length + 1];
    weights[0] = shares.length == 0 ? 1 : DEFENSIVE_WEIGHT;
    for (int k = 0; k < shares.length; k++) {
      weights[k + 1] = (1 - weights[0]) * Math.max(shares[k], SMALLEST_SHARE) / total;
    }
    return weights;
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
