package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How far flows lie from the middle of their set: the median, so that one clogged injector doesn't
 * make the sound ones look rich. What all flows of a bench share cancels, so only its repeatability
 * counts. In an odd set one flow is the median itself, but which one it is isn't sure: no deviation
 * there is surer than one from the mean of the set.
 */
final class FlowDeviations {
  /** Standard deviations to either end of a 90 % interval [-]. */
  static final double TO_90_PERCENT = 1.645;

  private FlowDeviations() {}

  /**
   * @param flows in any common unit, at least one
   * @param repeatability standard uncertainty of each as a share of itself [-]
   * @return q_i/median − 1 of each [-]
   */
  static List<Interval> of(List<Double> flows, double repeatability) {
    double[] weights = weights(flows);
    double middle =
        IntStream.range(0, weights.length).mapToDouble(i -> weights[i] * flows.get(i)).sum();
    List<Interval> deviations = new ArrayList<>();
    double share = weights.length % 2 == 0 ? 0 : 1 - 1.0 / weights.length;
    double least = share * repeatability * repeatability;
    for (int i = 0; i < weights.length; i++) {
      double ratio = flows.get(i) / middle;
      double variance = 0;
      for (int j = 0; j < weights.length; j++) {
        double slope = (i == j ? 1 : 0) - ratio * weights[j];
        double error = slope * flows.get(j) / middle * repeatability;
        variance += error * error;
      }
      double reach = TO_90_PERCENT * Math.sqrt(Math.max(variance, least));
      deviations.add(new Interval(ratio - 1 - reach, ratio - 1, ratio - 1 + reach));
    }
    return deviations;
  }

  /** Share of each flow in the median: one in the middle, or two with half each [-]. */
  private static double[] weights(List<Double> flows) {
    int n = flows.size();
    List<Integer> order =
        IntStream.range(0, n).boxed().sorted(Comparator.comparingDouble(flows::get)).toList();
    double[] weights = new double[n];
    weights[order.get((n - 1) / 2)] += 0.5;
    weights[order.get(n / 2)] += 0.5;
    return weights;
  }
}
