package holdcurve.inference.fit;

import holdcurve.inference.data.ReadingSeries;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Where to begin the search for a fit: with the fault of such a size that the curves lie as near
 * the readings as they can by that alone. A search that begins with far too small a leak widens the
 * reading error instead of the leak.
 */
public final class SizeStart {
  private static final double SMALLEST = -1.5;
  private static final double LARGEST = 3.5;

  /** Sizes are tried this far apart, then half as far on either side of the best [-]. */
  private static final double STEP = 1;

  private SizeStart() {}

  /** A size and how far the readings lie from its curves. */
  private record Tried(double size, double away) {
    static Tried nearest(Stream<Tried> some) {
      return some.min(Comparator.comparingDouble(Tried::away)).orElseThrow();
    }
  }

  /** Prior mean with the size of the first fault fitted; all zero without a fault [-]. */
  public static Start of(HypothesisModel model, JobModel data) {
    if (model.members().isEmpty()) {
      return Start.of(new double[model.dimension()]);
    }
    DoubleFunction<Tried> trial = size -> new Tried(size, away(model, data, at(model, size)));
    Tried rough =
        Tried.nearest(
            DoubleStream.iterate(SMALLEST, size -> size <= LARGEST, size -> size + STEP)
                .mapToObj(trial));
    Stream<Tried> beside =
        DoubleStream.of(rough.size() - STEP / 2, rough.size() + STEP / 2)
            .filter(size -> size > SMALLEST)
            .mapToObj(trial);
    return Start.of(at(model, Tried.nearest(Stream.concat(Stream.of(rough), beside)).size()));
  }

  private static double[] at(HypothesisModel model, double size) {
    double[] u = new double[model.dimension()];
    u[model.latentMap().latents().parameterIndex(0)] = size;
    return u;
  }

  private static double away(HypothesisModel model, JobModel data, double[] u) {
    return model.members().get(0).fault().showsInHold()
        ? awayInHolds(model, data, u)
        : awayInSides(model, data, u);
  }

  /** Sum of squares of what was found beside the holds, where only that speaks for a fault [-]. */
  private static double awayInSides(HypothesisModel model, JobModel data, double[] u) {
    return model
        .residuals(u)
        .map(rows -> Arrays.stream(rows, data.residualCount(), rows.length).map(r -> r * r).sum())
        .orElse(Double.MAX_VALUE);
  }

  /** Sum of squares of readings about curves, in the first and last test [Pa²]. */
  private static double awayInHolds(HypothesisModel model, JobModel data, double[] u) {
    double sum = 0;
    int last = data.series().size() - 1;
    for (int test = 0; test <= last; test += Math.max(1, last)) {
      ReadingSeries series = data.series().get(test);
      Optional<double[]> found = model.curve(u, test, series.time());
      if (found.isEmpty()) {
        return Double.MAX_VALUE;
      }
      double[] curve = found.get();
      for (int i = 0; i < curve.length; i++) {
        sum += series.weight()[i] * Math.pow(series.pressure()[i] - curve[i], 2);
      }
    }
    return sum;
  }
}
