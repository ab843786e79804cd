package holdcurve.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Finds the distinct posterior modes of a model with residuals, from several starts. */
public final class ModeFinder {
  private ModeFinder() {}

  /**
   * Starts at the prior mean, at the given starts, then at draws from the prior, each followed by
   * its mirror image. A search that runs into the neighbourhood of a mode already found stops
   * there.
   *
   * @param likelihood the model
   * @param seed seed of the drawn starts
   * @param settings uses the starts only
   * @return distinct modes, highest Laplace share first; empty when the model fails at every start
   */
  public static List<Mode> find(ResidualLikelihood likelihood, long seed, Settings settings) {
    return find(new CountedLikelihood(likelihood), new Well19937c(seed), settings);
  }

  static List<Mode> find(CountedLikelihood likelihood, RandomGenerator random, Settings settings) {
    List<Mode> modes = new ArrayList<>();
    for (double[] start : starts(likelihood.dimension(), random, settings)) {
      Mode mode = new DampedGaussNewton(likelihood, modes).search(start);
      if (mode != null && Double.isFinite(mode.logLikelihood()) && isNew(mode, modes)) {
        modes.add(mode);
      }
    }
    modes.sort(Comparator.comparingDouble(Mode::laplaceLogEvidence).reversed());
    return modes;
  }

  private static boolean isNew(Mode mode, List<Mode> modes) {
    return modes.stream().noneMatch(other -> other.distance(mode.u()) < 0.5);
  }

  private static List<double[]> starts(int dimension, RandomGenerator random, Settings settings) {
    List<double[]> starts = new ArrayList<>();
    starts.add(new double[dimension]);
    for (double[] given : settings.starts()) {
      if (given.length != dimension) {
        throw new IllegalArgumentException(
            "a start has " + given.length + " coordinates, the likelihood " + dimension);
      }
      starts.add(given.clone());
    }
    double[] drawn = {};
    for (int i = 0; i < settings.seededStarts(); i++) {
      drawn =
          i % 2 == 0
              ? Gaussians.vector(random, dimension)
              : Arrays.stream(drawn).map(x -> -x).toArray();
      starts.add(drawn);
    }
    return starts;
  }
}
