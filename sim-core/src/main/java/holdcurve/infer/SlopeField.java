package holdcurve.infer;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How departures depend on the conditional coordinates, as that changes with the sampled ones:
 * known at a fit and at a pair of places on either side along each axis of the posterior there,
 * with straight lines between. Slopes change little over a posterior, and cost ten times a curve.
 */
final class SlopeField {
  /** Beyond this many standard deviations slopes are taken as they are there [-]. */
  private static final double FARTHEST = 2;

  private final HypothesisModel model;
  private final double[] centre;
  private final double[][] base;
  private final int[] moving;
  private final int[] conditional;
  private final RealMatrix axes;
  private final RealMatrix ridge;

  /** Change of the slopes along each axis; null before the first question. */
  private double[][][] changes;

  /**
   * @param moving sampled coordinates that change the curve
   * @param covariance posterior covariance of those [-]
   * @param ridge how the conditional coordinates move with those
   */
  SlopeField(
      HypothesisModel model, Fit fit, int[] moving, RealMatrix covariance, RealMatrix ridge) {
    this.model = model;
    this.moving = moving;
    this.ridge = ridge;
    Latents latents = model.realisation().latents();
    centre = fit.u();
    conditional = latents.conditional();
    int[] curve = latents.curve();
    int[] columns =
        IntStream.range(0, curve.length)
            .filter(k -> Arrays.binarySearch(conditional, curve[k]) >= 0)
            .toArray();
    base =
        new Array2DRowRealMatrix(fit.linear().slopes(), false)
            .getSubMatrix(IntStream.range(0, model.rows()).toArray(), columns)
            .getData();
    axes = new CholeskyDecomposition(covariance).getL();
  }

  private double[][] change(double[] step) {
    double[][] up = slopes(step, 1);
    double[][] down = slopes(step, -1);
    double span = (up == base ? 0 : 1) + (down == base ? 0 : 1);
    RealMatrix change =
        new Array2DRowRealMatrix(up, false).subtract(new Array2DRowRealMatrix(down, false));
    return change.scalarMultiply(1 / Math.max(1, span)).getData();
  }

  /** Slopes a step away; where the model fails there, those at the centre. */
  private double[][] slopes(double[] step, double sign) {
    double[] along = ridge.operate(step);
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

  /** Slopes at {@code u}; a fresh array. */
  double[][] at(double[] u) {
    if (changes == null) {
      changes = new double[moving.length][][];
      Arrays.setAll(changes, k -> change(axes.getColumn(k)));
    }
    double[][] slopes = Arrays.stream(base).map(double[]::clone).toArray(double[][]::new);
    double[] steps = steps(u);
    for (int k = 0; k < steps.length; k++) {
      add(Math.max(-FARTHEST, Math.min(FARTHEST, steps[k])), changes[k], slopes);
    }
    return slopes;
  }

  /** Departure from the centre in steps along the axes: axes · steps = departure. */
  private double[] steps(double[] u) {
    double[] steps = new double[moving.length];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = u[moving[i]] - centre[moving[i]];
      for (int k = 0; k < i; k++) {
        steps[i] -= axes.getEntry(i, k) * steps[k];
      }
      steps[i] /= axes.getEntry(i, i);
    }
    return steps;
  }

  private static void add(double factor, double[][] change, double[][] to) {
    for (int i = 0; i < to.length; i++) {
      for (int c = 0; c < to[i].length; c++) {
        to[i][c] += factor * change[i][c];
      }
    }
  }
}
