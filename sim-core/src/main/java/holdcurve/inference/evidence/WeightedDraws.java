package holdcurve.inference.evidence;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Draws with weights that sum to 1. Summaries take a function of a draw, so that callers can ask
 * about any quantity in its own unit.
 */
public final class WeightedDraws {
  private final List<double[]> points;
  private final double[] weights;

  /**
   * @param points latent coordinates of each draw [-]
   * @param weights not negative, one a draw; scaled to sum 1 here [-]
   */
  public WeightedDraws(List<double[]> points, double[] weights) {
    if (points.size() != weights.length) {
      throw new IllegalArgumentException(
          points.size() + " draws but " + weights.length + " weights");
    }
    double total = Arrays.stream(weights).sum();
    boolean bad = Arrays.stream(weights).anyMatch(w -> !(w >= 0));
    if (bad || (weights.length > 0 && !(total > 0 && total < Double.POSITIVE_INFINITY))) {
      throw new IllegalArgumentException(
          "weights must be non-negative with a finite sum above 0, got the sum " + total);
    }
    this.points = points.stream().map(double[]::clone).toList();
    this.weights = Arrays.stream(weights).map(w -> w / total).toArray();
  }

  /** Number of draws; 0 when no possible point was found [-]. */
  public int size() {
    return weights.length;
  }

  /** Latent coordinates of draw i, not to be changed [-]. */
  public double[] point(int i) {
    return points.get(i);
  }

  /** Weighted mean of a quantity, in its unit. */
  public double mean(ToDoubleFunction<double[]> quantity) {
    double sum = 0;
    for (int i = 0; i < size(); i++) {
      sum += weights[i] == 0 ? 0 : weights[i] * quantity.applyAsDouble(points.get(i));
    }
    return size() == 0 ? Double.NaN : sum;
  }

  /**
   * Weighted quantile: each value stands at the middle of its weight, with straight lines between.
   *
   * @param quantity evaluated once for every draw of positive weight
   * @param probability 0 to 1 [-]
   */
  public double quantile(ToDoubleFunction<double[]> quantity, double probability) {
    return new Sorted(quantity).quantile(probability);
  }

  private record Entry(double value, double weight) {}

  /** Values of a quantity in rising order with the cumulative weight at the middle of each. */
  private final class Sorted {
    private final double[] value;
    private final double[] middle;

    Sorted(ToDoubleFunction<double[]> quantity) {
      List<Entry> entries =
          IntStream.range(0, size())
              .filter(i -> weights[i] > 0)
              .mapToObj(i -> new Entry(quantity.applyAsDouble(points.get(i)), weights[i]))
              .sorted(Comparator.comparingDouble(Entry::value))
              .toList();
      value = entries.stream().mapToDouble(Entry::value).toArray();
      middle = new double[value.length];
      double below = 0;
      for (int i = 0; i < middle.length; i++) {
        middle[i] = below + 0.5 * entries.get(i).weight();
        below += entries.get(i).weight();
      }
    }

    double quantile(double probability) {
      if (!(probability >= 0 && probability <= 1)) {
        throw new IllegalArgumentException("a probability lies in 0 to 1, got " + probability);
      }
      if (value.length == 0) {
        return Double.NaN;
      }
      int i = Arrays.binarySearch(middle, probability);
      int above = i >= 0 ? i : -i - 1;
      if (above == 0 || above == value.length) {
        return value[above == 0 ? 0 : above - 1];
      }
      double part = (probability - middle[above - 1]) / (middle[above] - middle[above - 1]);
      return value[above - 1] + part * (value[above] - value[above - 1]);
    }
  }
}
