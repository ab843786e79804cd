package holdcurve.inference.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.random.Well19937c;

/**
 * Several independent tempered runs put together.
 *
 * <p>The evidence is the mean over the runs. Its error is the larger of two: the spread between the
 * runs, and what each run's family tree says about itself; either alone can be lucky.
 */
public final class TemperedEvidence {
  private final List<TemperedRun> runs = new ArrayList<>();

  /**
   * @param particles of one run, at least 20 [-]
   * @param count independent runs, at least 2 [-]
   * @param moves accepted moves per particle and temperature [-]
   */
  public TemperedEvidence(
      LogLikelihood likelihood, long seed, int particles, int count, double moves) {
    for (int r = 0; r < count; r++) {
      TemperedRun run =
          new TemperedRun(likelihood, new Well19937c(Gaussians.seed(seed, r)), particles, moves);
      run.run();
      runs.add(run);
    }
  }

  /** ln Z [nat]; negative infinity when no possible point was found. */
  public double logEvidence() {
    return LogSum.of(logEvidences()) - Math.log(runs.size());
  }

  private double[] logEvidences() {
    return runs.stream().mapToDouble(TemperedRun::logEvidence).toArray();
  }

  /** Standard error of the log evidence [nat]. */
  public double standardError() {
    if (logEvidence() == Double.NEGATIVE_INFINITY) {
      return Double.POSITIVE_INFINITY;
    }
    double[] share = LogSum.normalised(logEvidences());
    int r = share.length;
    double between = 0;
    double within = 0;
    for (int i = 0; i < r; i++) {
      between += Math.pow(share[i] - 1.0 / r, 2) * r / (r - 1);
      within += share[i] * share[i] * runs.get(i).relativeVariance();
    }
    return Math.sqrt(Math.max(between, within));
  }

  /** Particles of all runs, each run weighted by its evidence. */
  public WeightedDraws draws() {
    double[] share =
        logEvidence() == Double.NEGATIVE_INFINITY
            ? new double[runs.size()]
            : LogSum.normalised(logEvidences());
    List<double[]> points = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (int i = 0; i < share.length; i++) {
      double[][] particles = runs.get(i).particles();
      double each = share[i] / particles.length;
      if (each > 0) {
        points.addAll(Arrays.asList(particles));
        weights.addAll(Collections.nCopies(particles.length, each));
      }
    }
    return new WeightedDraws(points, weights.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
