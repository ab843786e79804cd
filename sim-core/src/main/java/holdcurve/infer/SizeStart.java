package holdcurve.infer;

import java.util.Arrays;

/**
 * Where to begin the search for a fit: with the fault of such a size that the curves lie as near
 * the readings as they can by that alone. A search that begins with far too small a leak widens the
 * reading error instead of the leak.
 */
final class SizeStart {
  private static final double SMALLEST = -1.5;
  private static final double LARGEST = 4;
  private static final double STEP = 0.5;

  private SizeStart() {}

  /** Prior mean with the size of the first fault fitted; all zero without a fault [-]. */
  static double[] of(HypothesisModel model, JobModel data) {
    double[] best = new double[model.dimension()];
    if (model.members().isEmpty()) {
      return best;
    }
    boolean flows = !model.members().get(0).fault().showsInHold();
    int size = model.realisation().latents().parameterIndex(0);
    double least = Double.POSITIVE_INFINITY;
    for (double z = SMALLEST; z <= LARGEST; z += STEP) {
      double[] u = new double[model.dimension()];
      u[size] = z;
      double away = flows ? awayInSides(model, data, u) : away(model, data, u);
      if (away < least) {
        least = away;
        best = u;
      }
    }
    return best;
  }

  /** Sum of squares of what was found beside the holds, where only that speaks for a fault [-]. */
  private static double awayInSides(HypothesisModel model, JobModel data, double[] u) {
    double[] rows = model.departures(u);
    return rows == null
        ? Double.MAX_VALUE
        : Arrays.stream(rows, data.residualCount(), rows.length).map(r -> r * r).sum();
  }

  /** Sum of squares of readings about curves, in the first and last test [Pa²]. */
  private static double away(HypothesisModel model, JobModel data, double[] u) {
    double sum = 0;
    int last = data.series().size() - 1;
    for (int test = 0; test <= last; test += Math.max(1, last)) {
      ReadingSeries series = data.series().get(test);
      double[] curve = model.curve(u, test, series.time());
      for (int i = 0; i < curve.length; i++) {
        sum += series.weight()[i] * Math.pow(series.pressure()[i] - curve[i], 2);
      }
    }
    return sum;
  }
}
