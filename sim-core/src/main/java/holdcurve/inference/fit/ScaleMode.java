package holdcurve.inference.fit;

import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.Latents;

/**
 * Where the two scales of the readings are likeliest with everything else integrated out, curves
 * taken as linear. Found by Newton steps on differences; nothing is simulated. Scales fitted
 * together with the rest, instead, come out too small, and have modes that are none.
 *
 * @param place coordinates of the scales [-]
 * @param hessian of minus the log posterior there [-]
 * @param drift how the posterior mean of the rest moves with each scale [-]
 */
public record ScaleMode(double[] place, double[][] hessian, double[][] drift) {
  private static final double STEP = 0.1;
  private static final double LONGEST = 1;
  private static final double TOLERANCE = 1e-3;
  private static final int ITERATIONS = 12;

  /** Least curvature: the prior has 1, data that want a tail take some of it [-]. */
  private static final double LEAST_CURVATURE = 0.3;

  /** The rest of the problem: curves that are linear about a place. */
  record Around(
      HypothesisModel model,
      NormalEquations sums,
      double[] u,
      NormalEquations.Projected projected) {
    Conditional at(double first, double second) {
      double[] v = u.clone();
      int[] scales = latents().scales();
      v[scales[0]] = first;
      v[scales[1]] = second;
      return sums.scaled(model.scales(v)).about(latents().pickCurve(u), projected);
    }

    private Latents latents() {
      return model.latentMap().latents();
    }
  }

  private static double value(Conditional rest, double first, double second) {
    return rest.logMarginal() - 0.5 * (first * first + second * second);
  }

  /**
   * @param around the scales of its {@code u} are the start
   */
  static ScaleMode find(Around around) {
    int[] scales = around.latents().scales();
    Local local = new Local(around, around.u()[scales[0]], around.u()[scales[1]]);
    for (int iteration = 0; iteration < ITERATIONS; iteration++) {
      double[] step = local.step();
      if (local.predictedRise(step) < TOLERANCE) {
        break;
      }
      Local next = null;
      for (double part = 1; part > 0.1 && next == null; part /= 2) {
        double first = local.first + part * step[0];
        double second = local.second + part * step[1];
        if (value(around.at(first, second), first, second) > local.value) {
          next = new Local(around, first, second);
        }
      }
      if (next == null) {
        break;
      }
      local = next;
    }
    return local.mode();
  }

  /** Values, sensitivities and curvature about one pair of scales. */
  private static final class Local {
    private final double first;
    private final double second;
    private final double value;
    private final double[] slope;
    private final double[][] hessian;
    private final double[][] drift;

    Local(Around around, double first, double second) {
      this.first = first;
      this.second = second;
      Conditional right = around.at(first + STEP, second);
      Conditional left = around.at(first - STEP, second);
      Conditional up = around.at(first, second + STEP);
      Conditional down = around.at(first, second - STEP);
      value = value(around.at(first, second), first, second);
      double r = value(right, first + STEP, second);
      double l = value(left, first - STEP, second);
      double u = value(up, first, second + STEP);
      double d = value(down, first, second - STEP);
      double corner = value(around.at(first + STEP, second + STEP), first + STEP, second + STEP);
      slope = new double[] {(r - l) / (2 * STEP), (u - d) / (2 * STEP)};
      double square = STEP * STEP;
      hessian =
          bounded(
              (2 * value - r - l) / square,
              (2 * value - u - d) / square,
              (r + u - value - corner) / square);
      drift = new double[][] {difference(right, left), difference(up, down)};
    }

    private static double[] difference(Conditional after, Conditional before) {
      double[] drift = after.mean().clone();
      for (int j = 0; j < drift.length; j++) {
        drift[j] = (drift[j] - before.mean()[j]) / (2 * STEP);
      }
      return drift;
    }

    /** Raises the diagonal until both curvatures are at least the least. */
    private static double[][] bounded(double a, double b, double mixed) {
      double middle = (a + b) / 2;
      double least = middle - Math.hypot((a - b) / 2, mixed);
      double lift = Math.max(0, LEAST_CURVATURE - least);
      return new double[][] {{a + lift, mixed}, {mixed, b + lift}};
    }

    double[] step() {
      double a = hessian[0][0];
      double b = hessian[1][1];
      double mixed = hessian[0][1];
      double determinant = a * b - mixed * mixed;
      double x = (b * slope[0] - mixed * slope[1]) / determinant;
      double y = (a * slope[1] - mixed * slope[0]) / determinant;
      double shorten = Math.min(1, LONGEST / Math.hypot(x, y));
      return new double[] {shorten * x, shorten * y};
    }

    double predictedRise(double[] step) {
      return 0.5 * (step[0] * slope[0] + step[1] * slope[1]);
    }

    ScaleMode mode() {
      return new ScaleMode(new double[] {first, second}, hessian, drift);
    }
  }
}
