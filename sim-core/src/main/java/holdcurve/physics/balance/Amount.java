package holdcurve.physics.balance;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A quantity over all that is still possible, in the unit that its owner states. Means of parts add
 * up to the mean of the whole; medians wouldn't.
 *
 * @param mean expected value
 * @param low 5 % quantile
 * @param high 95 % quantile
 */
public record Amount(double mean, double low, double high) {
  /**
   * @param values possible ones, at least one
   * @param weights their probabilities, or anything in proportion to them
   */
  public static Amount of(List<Double> values, List<Double> weights) {
    double sum = weights.stream().mapToDouble(w -> w).sum();
    double mean = 0;
    for (int i = 0; i < values.size(); i++) {
      mean += values.get(i) * weights.get(i) / sum;
    }
    int[] order =
        IntStream.range(0, values.size())
            .boxed()
            .sorted(Comparator.comparing(values::get))
            .mapToInt(i -> i)
            .toArray();
    return new Amount(
        mean,
        quantile(values, weights, order, 0.05 * sum),
        quantile(values, weights, order, 0.95 * sum));
  }

  private static double quantile(
      List<Double> values, List<Double> weights, int[] order, double below) {
    double sum = 0;
    for (int i : order) {
      sum += weights.get(i);
      if (sum >= below) {
        return values.get(i);
      }
    }
    return values.get(order[order.length - 1]);
  }
}
