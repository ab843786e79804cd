package holdcurve.infer;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How the readings depend on the conditional coordinates, as that changes with the sampled ones:
 * known at a mode and at a pair of places on either side along each axis of the posterior there,
 * with straight lines between. Slopes change little over a posterior, and cost ten times a curve.
 */
final class SlopeField {
  /** Beyond this many standard deviations slopes are taken as they are there [-]. */
  private static final double FARTHEST = 2;

  private final int[] moving;
  private final double[] centre;
  private final double[][] base;
  private final double[][][] changes;
  private final CholeskyDecomposition axes;

  /**
   * @param model the hypothesis
   * @param centre the mode, over all coordinates
   * @param moving sampled coordinates that change the curve
   * @param covariance posterior covariance of those [-]
   * @param ridge where the conditional coordinates are expected: one column for each of {@code
   *     moving}, one row for each of {@code conditional}
   * @throws IllegalArgumentException if the model fails at the mode
   */
  SlopeField(
      HypothesisModel model,
      double[] centre,
      int[] moving,
      RealMatrix covariance,
      int[] conditional,
      RealMatrix ridge) {
    this.moving = moving;
    this.centre = centre;
    HypothesisModel.Linear at = model.linear(centre, conditional);
    if (at == null) {
      throw new IllegalArgumentException("the model fails at its mode");
    }
    base = at.slopes();
    axes = new CholeskyDecomposition(covariance);
    changes = new double[moving.length][][];
    for (int k = 0; k < moving.length; k++) {
      double[] step = axes.getL().getColumn(k);
      double[] along = ridge.operate(step);
      changes[k] = change(model, conditional, step, along);
    }
  }

  private double[][] change(
      HypothesisModel model, int[] conditional, double[] step, double[] along) {
    double[][] up = slopes(model, conditional, step, along, 1);
    double[][] down = slopes(model, conditional, step, along, -1);
    double span = (up == base ? 0 : 1) + (down == base ? 0 : 1);
    RealMatrix change =
        new Array2DRowRealMatrix(up, false).subtract(new Array2DRowRealMatrix(down, false));
    return change.scalarMultiply(1 / Math.max(1, span)).getData();
  }

  /** Slopes a step away; where the model fails there, those at the centre. */
  private double[][] slopes(
      HypothesisModel model, int[] conditional, double[] step, double[] along, double sign) {
    double[] u = centre.clone();
    for (int k = 0; k < moving.length; k++) {
      u[moving[k]] += sign * step[k];
    }
    for (int k = 0; k < conditional.length; k++) {
      u[conditional[k]] += sign * along[k];
    }
    HypothesisModel.Linear there = model.linear(u, conditional);
    return there == null ? base : there.slopes();
  }

  /** Slopes at {@code u}, before whitening; a fresh array [Pa]. */
  double[][] at(double[] u) {
    double[][] slopes = new double[base.length][];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = base[i].clone();
    }
    double[] away = new double[moving.length];
    for (int k = 0; k < away.length; k++) {
      away[k] = u[moving[k]] - centre[moving[k]];
    }
    forward(away);
    for (int k = 0; k < away.length; k++) {
      double steps = Math.max(-FARTHEST, Math.min(FARTHEST, away[k]));
      add(steps, changes[k], slopes);
    }
    return slopes;
  }

  /** Turns a departure into steps along the axes: L t = departure. */
  private void forward(double[] away) {
    RealMatrix lower = axes.getL();
    for (int i = 0; i < away.length; i++) {
      for (int k = 0; k < i; k++) {
        away[i] -= lower.getEntry(i, k) * away[k];
      }
      away[i] /= lower.getEntry(i, i);
    }
  }

  private static void add(double factor, double[][] change, double[][] to) {
    for (int i = 0; i < to.length; i++) {
      for (int c = 0; c < to[i].length; c++) {
        to[i][c] += factor * change[i][c];
      }
    }
  }
}
