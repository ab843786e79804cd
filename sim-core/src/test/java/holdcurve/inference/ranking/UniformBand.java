package holdcurve.inference.ranking;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * Whether values are spread evenly over 0 to 1: the empirical distribution must stay inside a band
 * that holds 95 of 100 even samples everywhere at once (Säilynoja, Bürkner and Vehtari, Stat.
 * Comput. 32 (2022) 32, with the level found by simulation).
 */
public final class UniformBand {
  private static final int SAMPLES = 2000;

  private final BinomialDistribution[] counts;

  /** Level of each point's own interval that makes the band hold 95 % [-]. */
  public final double level;

  /**
   * @param size of the samples; the band is looked at in as many even places
   */
  public UniformBand(int size) {
    counts = new BinomialDistribution[size];
    for (int i = 0; i < size; i++) {
      counts[i] = new BinomialDistribution(size, (i + 1.0) / size);
    }
    Random random = new Random(11);
    double[] levels = new double[SAMPLES];
    for (int k = 0; k < SAMPLES; k++) {
      levels[k] = levelOf(random.doubles(size).toArray());
    }
    Arrays.sort(levels);
    level = levels[SAMPLES / 20];
  }

  /** The widest band that a sample just leaves, by the level of its worst place [-]. */
  public double levelOf(double[] values) {
    double worst = 1;
    for (int i = 0; i + 1 < counts.length; i++) {
      double place = (i + 1.0) / counts.length;
      int below = (int) Arrays.stream(values).filter(v -> v <= place).count();
      double low = counts[i].cumulativeProbability(below);
      double high = 1 - counts[i].cumulativeProbability(below - 1);
      worst = Math.min(worst, 2 * Math.min(low, high));
    }
    return worst;
  }
}
