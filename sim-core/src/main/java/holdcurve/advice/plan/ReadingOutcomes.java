package holdcurve.advice.plan;

import holdcurve.common.input.Cancellation;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Information in a test whose outcome is a row of readings.
 *
 * <p>Readings are whitened by the scatter that a likelihood takes them to have, which is wider than
 * their own where it counts at a power below one, and brought down to the few directions that set
 * the hypotheses apart (Fisher's discriminants). There the density of outcomes under a hypothesis
 * is a mixture of Gaussians about its draws, see {@link KernelDensity}. For any such densities q,
 * the mean of log₂ q(h|y)/p(h) over true outcomes is at most the mutual information (Barber and
 * Agakov, Advances in Neural Information Processing Systems 16 (2004) 201). With outcomes of draws
 * that q was not made from it comes out low, so of several shapes of q the best is taken; with
 * outcomes of those it was made from it comes out high. The answer is the middle, and half the gap
 * counts as error.
 */
final class ReadingOutcomes {
  private static final int[] DIRECTIONS = {1, 2, 4};
  private static final int FOLDS = 4;
  private static final int REPEATS = 2;

  private final double[] prior;
  private final double[][][] place;
  private final double[][][] outcome;
  private final double[][][] readings;
  private final double[][] scatter;

  /**
   * @param prior probability of each hypothesis [-]
   * @param expected hypothesis, draw, reading → what would be read but for its scatter
   * @param covariance of that scatter
   * @param judged covariance by which outcomes are judged
   */
  ReadingOutcomes(
      double[] prior, double[][][] expected, double[][] covariance, double[][] judged, long seed) {
    this.prior = prior;
    RealMatrix lower = lower(covariance);
    DecompositionSolver whitener = new LUDecomposition(lower(judged)).getSolver();
    RandomGenerator random = new Well19937c(seed);
    place = new double[prior.length][][];
    outcome = new double[prior.length][][];
    readings = new double[prior.length][][];
    for (int h = 0; h < prior.length; h++) {
      place[h] = new double[expected[h].length][];
      outcome[h] = new double[expected[h].length * REPEATS][];
      readings[h] = new double[outcome[h].length][];
      for (int i = 0; i < outcome[h].length; i++) {
        Cancellation.check();
        double[] mean = expected[h][i / REPEATS];
        double[] read = scattered(mean, lower, random);
        place[h][i / REPEATS] = solve(whitener, mean);
        outcome[h][i] = solve(whitener, read);
        readings[h][i] = read;
      }
    }
    RealMatrix directions =
        new Discriminants(prior, place).directions(DIRECTIONS[DIRECTIONS.length - 1]);
    scatter = directions.transpose().multiply(directions).getData();
    turn(directions);
  }

  /** Coordinates along the directions instead of readings. */
  private void turn(RealMatrix directions) {
    for (double[][][] rows : List.of(place, outcome)) {
      for (double[][] some : rows) {
        Arrays.setAll(some, i -> directions.preMultiply(some[i]));
      }
    }
  }

  private static RealMatrix lower(double[][] covariance) {
    return new CholeskyDecomposition(new Array2DRowRealMatrix(covariance, false)).getL();
  }

  private static double[] solve(DecompositionSolver whitener, double[] values) {
    return whitener.solve(new ArrayRealVector(values, false)).toArray();
  }

  private static double[] scattered(double[] mean, RealMatrix lower, RandomGenerator random) {
    double[] z = new double[mean.length];
    Arrays.setAll(z, k -> random.nextGaussian());
    double[] read = lower.operate(z);
    for (int k = 0; k < read.length; k++) {
      read[k] += mean[k];
    }
    return read;
  }

  /** Hypothesis, outcome → the readings of that simulated outcome; each as likely as the other. */
  double[][][] readings() {
    return readings;
  }

  /** Information with its error. */
  Information information() {
    Sum best = null;
    Information answer = Information.NOTHING;
    for (int directions : DIRECTIONS) {
      for (KernelDensity.Shape shape : KernelDensity.SHAPES) {
        Sum low = new Sum();
        for (int fold = 0; fold < FOLDS; fold++) {
          add(low, density(directions, shape, fold), fold);
        }
        if (best == null || low.mean() > best.mean()) {
          best = low;
          answer = between(low, density(directions, shape, -1));
        }
      }
      if (directions >= place[0][0].length) {
        break;
      }
    }
    return answer;
  }

  private KernelDensity density(int directions, KernelDensity.Shape shape, int left) {
    return new KernelDensity(prior, place, scatter, directions, shape, left, FOLDS);
  }

  private Information between(Sum low, KernelDensity all) {
    Sum high = new Sum();
    for (int fold = 0; fold < FOLDS; fold++) {
      add(high, all, fold);
    }
    double middle = (low.mean() + high.mean()) / 2;
    double gap = Math.abs(high.mean() - low.mean()) / 2;
    return new Information(Math.max(0, middle), Math.hypot(low.error(), gap));
  }

  /** Adds the gain of all outcomes whose draw is in this fold. */
  private void add(Sum sum, KernelDensity density, int fold) {
    double[] log = new double[prior.length];
    for (int h = 0; h < prior.length; h++) {
      for (int i = 0; i < outcome[h].length; i++) {
        if (i / REPEATS % FOLDS == fold) {
          Cancellation.check();
          sum.add(h, Information.bits(gain(density, log, h, outcome[h][i])));
        }
      }
    }
  }

  private double gain(KernelDensity density, double[] log, int truth, double[] y) {
    double most = Double.NEGATIVE_INFINITY;
    for (int h = 0; h < log.length; h++) {
      log[h] = density.log(h, y);
      most = Math.max(most, log[h]);
    }
    double total = 0;
    for (int h = 0; h < log.length; h++) {
      total += prior[h] * Math.exp(log[h] - most);
    }
    return log[truth] - most - Math.log(total);
  }

  /** Mean over hypotheses by weight of means over outcomes, with its standard error. */
  private final class Sum {
    private final int[] count = new int[prior.length];
    private final double[] sum = new double[prior.length];
    private final double[] squares = new double[prior.length];

    void add(int h, double value) {
      count[h]++;
      sum[h] += value;
      squares[h] += value * value;
    }

    double mean() {
      double mean = 0;
      for (int h = 0; h < sum.length; h++) {
        mean += prior[h] * sum[h] / count[h];
      }
      return mean;
    }

    /** Outcomes of one draw are alike: they count as one. */
    double error() {
      double variance = 0;
      for (int h = 0; h < sum.length; h++) {
        double mean = sum[h] / count[h];
        double within = Math.max(0, squares[h] / count[h] - mean * mean);
        variance += prior[h] * prior[h] * within * REPEATS / count[h];
      }
      return Math.sqrt(variance);
    }
  }
}
