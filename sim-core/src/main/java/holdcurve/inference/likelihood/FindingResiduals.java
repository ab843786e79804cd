package holdcurve.inference.likelihood;

import holdcurve.common.work.ComputationException;
import holdcurve.inference.finding.FindingLikelihood;
import java.util.Arrays;
import java.util.List;

/** The rows of residuals that stand after those of the readings: what was found out beside them. */
final class FindingResiduals {
  private final HypothesisModel model;
  private final List<FindingLikelihood> sides;
  private final int tests;

  FindingResiduals(HypothesisModel model, List<FindingLikelihood> sides, int tests) {
    this.model = model;
    this.sides = sides;
    this.tests = tests;
  }

  /** Fills all rows from {@code place} on; where one fails, it becomes not-a-number. */
  void fill(double[] u, double[] out, int place) {
    LatentCircuitState truth = new LatentCircuitState(model, u);
    int row = place;
    for (FindingLikelihood side : sides) {
      fill(side, truth, out, row);
      row += side.rows();
    }
  }

  private static void fill(
      FindingLikelihood side, LatentCircuitState truth, double[] out, int row) {
    try {
      side.residuals(truth, out, row);
    } catch (ComputationException e) {
      Arrays.fill(out, row, row + side.rows(), Double.NaN);
    }
  }

  /**
   * Fills one column of the Jacobian of these rows by differences; where the step fails, with zero.
   *
   * @param at residuals of all rows at {@code u}
   * @param j coordinate
   * @param out rows of the whole Jacobian
   * @param column to fill
   * @param place first row of these
   */
  void fillColumn(double[] u, double[] at, int j, double[][] out, int column, int place) {
    double[] moved = new double[sides.isEmpty() ? 0 : at.length];
    int row = place;
    for (FindingLikelihood side : sides) {
      if (reaches(j, side)) {
        double[] v = u.clone();
        v[j] += side.differenceStep();
        fill(side, new LatentCircuitState(model, v), moved, row);
        for (int i = row; i < row + side.rows(); i++) {
          double slope = (moved[i] - at[i]) / side.differenceStep();
          out[i][column] = Double.isFinite(slope) ? slope : 0;
        }
      }
      row += side.rows();
    }
  }

  /** Coordinates that change no curve belong to the gauge. */
  private boolean reaches(int j, FindingLikelihood side) {
    Latents latents = model.latentMap().latents();
    if (!latents.matters(j, side.reach())) {
      return false;
    }
    if (j >= latents.firstOfSides()) {
      return side.unknowns() > 0;
    }
    int touched = 0;
    boolean concerned = false;
    for (int test = 0; test < tests; test++) {
      if (latents.changesCurve(j, test)) {
        touched++;
        concerned |= side.concerns(test);
      }
    }
    return concerned || touched == 0 || !latents.isOfOneTest(j);
  }
}
