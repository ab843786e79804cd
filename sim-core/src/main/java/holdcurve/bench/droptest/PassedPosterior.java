package holdcurve.bench.droptest;

import holdcurve.common.input.Cancellation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * What each injector passes in one firing, given all readings: a grid for each injector under each
 * guess at how the readings scatter, and the weight that the readings give to each guess.
 */
final class PassedPosterior {
  private static final int CELLS = 61;

  /** Unsteadiness of the eye as a share of the gauge's step: assumed, equally likely [-]. */
  private static final double[] UNSTEADY = {0.15, 0.3, 0.55};

  /** Scatter of the start as a share of the step, beside "anywhere": assumed [-]. */
  private static final double[] START_SCATTER = {0.1, 0.35};

  /** Scatter of a firing: a relay or a timer of a hundredth of its time, assumed [-]. */
  static final double FIRING = 0.01;

  /** Share of readings that are slips, and the range they may lie in: assumed [-], [Pa]. */
  private static final double SLIPS = 0.01;

  private static final double SLIP_RANGE = 1e5;

  private final DropTest test;
  private final TrappedFuel fuel;
  private final List<String> injectors;

  /** Grid of what an injector passes [m³/√Pa]: one row an injector. */
  private final double[][] passed;

  private final List<Guess> guesses = new ArrayList<>();

  /**
   * @param weight of the guess [-]
   * @param cumulative one row an injector, over the cells of its grid [-]
   */
  private record Guess(double weight, double[][] cumulative) {}

  /** A guess at the scatter, with the logarithm of its prior. */
  private record Scatter(ReadingGuess eye, double logPrior) {}

  PassedPosterior(DropTest test, TrappedFuel fuel) {
    this.test = test;
    this.fuel = fuel;
    this.injectors = test.injectors();
    this.passed = new double[injectors.size()][];
    for (int i = 0; i < passed.length; i++) {
      passed[i] = grid(test.of(injectors.get(i)));
    }
    weigh();
  }

  private double[] grid(List<Firing> firings) {
    double before = firings.stream().mapToDouble(Firing::before).average().orElseThrow();
    double after = firings.stream().mapToDouble(Firing::after).average().orElseThrow();
    double reach = test.resolution() * (1.3 + 2.5 / Math.sqrt(firings.size()));
    double most = Math.min(before, before - after + reach);
    double least = Math.max(0.02 * test.resolution(), before - after - reach);
    double[] grid = new double[CELLS];
    for (int k = 0; k < CELLS; k++) {
      double drop = least + (most - least) * (k + 0.5) / CELLS;
      grid[k] = fuel.passed(before, before - drop);
    }
    return grid;
  }

  private void weigh() {
    List<Map<Firing, Integer>> counts = new ArrayList<>();
    List<Map<Firing, double[][]>> expected = new ArrayList<>();
    for (int i = 0; i < passed.length; i++) {
      Map<Firing, Integer> count = new LinkedHashMap<>();
      test.of(injectors.get(i)).forEach(firing -> count.merge(firing, 1, Integer::sum));
      counts.add(count);
      expected.add(expected(count, passed[i]));
    }
    List<Scatter> scatters = scatters();
    double[] logWeights = new double[scatters.size()];
    double[][][] cumulative = new double[scatters.size()][passed.length][];
    double best = Double.NEGATIVE_INFINITY;
    for (int h = 0; h < logWeights.length; h++) {
      logWeights[h] = scatters.get(h).logPrior;
      for (int i = 0; i < passed.length; i++) {
        double[] logs = logs(scatters.get(h).eye, counts.get(i), expected.get(i));
        cumulative[h][i] = new double[CELLS];
        logWeights[h] += accumulate(logs, cumulative[h][i]);
      }
      best = Math.max(best, logWeights[h]);
    }
    for (int h = 0; h < logWeights.length; h++) {
      guesses.add(new Guess(Math.exp(logWeights[h] - best), cumulative[h]));
    }
  }

  /** For each kind of firing and each cell the pressure after, and its slope by that before. */
  private Map<Firing, double[][]> expected(Map<Firing, Integer> firings, double[] grid) {
    Map<Firing, double[][]> expected = new LinkedHashMap<>();
    double step = 0.2 * test.resolution();
    for (Firing firing : firings.keySet()) {
      double[][] table = new double[CELLS][];
      for (int k = 0; k < CELLS; k++) {
        double after = fuel.after(firing.before(), grid[k]);
        double higher = fuel.after(firing.before() + step, grid[k]);
        table[k] = new double[] {after, (higher - after) / step};
      }
      expected.put(firing, table);
    }
    return expected;
  }

  private List<Scatter> scatters() {
    double step = test.resolution();
    double mean = test.meanBefore();
    double least = test.firings().stream().mapToDouble(Firing::before).min().orElseThrow();
    double most = test.firings().stream().mapToDouble(Firing::before).max().orElseThrow();
    double logAnywhere = test.firings().size() * Math.log(step / (most - least + 2 * step));
    List<Scatter> scatters = new ArrayList<>();
    for (double unsteady : UNSTEADY) {
      ReadingGuess anywhere =
          new ReadingGuess(step, unsteady * step, FIRING, mean, Double.POSITIVE_INFINITY);
      scatters.add(new Scatter(anywhere, logAnywhere));
      for (double scatter : START_SCATTER) {
        Cancellation.check();
        int reach = 6;
        for (int k = -reach; k <= reach; k++) {
          double start = mean + 0.15 * step * k;
          scatters.add(
              new Scatter(
                  new ReadingGuess(step, unsteady * step, FIRING, start, scatter * step),
                  -Math.log(START_SCATTER.length * (2 * reach + 1))));
        }
      }
    }
    return scatters;
  }

  private double[] logs(
      ReadingGuess eye, Map<Firing, Integer> counts, Map<Firing, double[][]> expected) {
    double[] logs = new double[CELLS];
    double slip = SLIPS * Math.min(1, square(test.resolution() / SLIP_RANGE));
    counts.forEach(
        (firing, count) -> {
          double[][] table = expected.get(firing);
          for (int k = 0; k < CELLS; k++) {
            double p = eye.probability(firing, table[k][0], table[k][1]);
            logs[k] += count * Math.log((1 - SLIPS) * p + slip);
          }
        });
    return logs;
  }

  private static double square(double x) {
    return x * x;
  }

  /**
   * @return logarithm of the sum
   */
  private static double accumulate(double[] logs, double[] cumulative) {
    double top = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      top = Math.max(top, log);
    }
    double sum = 0;
    for (int k = 0; k < logs.length; k++) {
      sum += Math.exp(logs[k] - top);
      cumulative[k] = sum;
    }
    return top + Math.log(sum);
  }

  /** What each injector passes, drawn from the posterior [m³/√Pa]. */
  double[] draw(RandomGenerator random) {
    double[] weights = guesses.stream().mapToDouble(Guess::weight).toArray();
    double[] sums = new double[weights.length];
    double sum = 0;
    for (int h = 0; h < weights.length; h++) {
      sum += weights[h];
      sums[h] = sum;
    }
    Guess guess = guesses.get(cell(sums, random.nextDouble()));
    double[] drawn = new double[passed.length];
    for (int i = 0; i < drawn.length; i++) {
      int k = cell(guess.cumulative[i], random.nextDouble());
      double width = passed[i][Math.min(CELLS - 1, k + 1)] - passed[i][Math.max(0, k - 1)];
      double cells = k == 0 || k == CELLS - 1 ? 1 : 2;
      drawn[i] = passed[i][k] + width / cells * (random.nextDouble() - 0.5);
    }
    return drawn;
  }

  private static int cell(double[] sums, double share) {
    double wanted = share * sums[sums.length - 1];
    int low = 0;
    int high = sums.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sums[middle] >= wanted) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
