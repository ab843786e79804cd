package holdcurve.infer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Draws over all coordinates of a judged hypothesis. */
final class PosteriorDraws {
  private PosteriorDraws() {}

  /**
   * Equally likely draws: the sampled coordinates resampled, the rest from their conditional. Fewer
   * than asked for where the model fails.
   */
  static List<double[]> of(Judged judged, long seed, int count) {
    RandomGenerator random = new Well19937c(seed);
    List<double[]> draws = new ArrayList<>();
    Map<List<Double>, MarginalLikelihood.Point> known = new HashMap<>();
    for (double[] sampled : judged.evidence().draws().resample(seed, count)) {
      List<Double> place = Arrays.stream(sampled).boxed().toList();
      MarginalLikelihood.Point point =
          known.computeIfAbsent(place, key -> judged.likelihood().at(sampled));
      if (point != null) {
        double[] normal = new double[judged.likelihood().conditionalCount()];
        for (int i = 0; i < normal.length; i++) {
          normal[i] = random.nextGaussian();
        }
        draws.add(judged.likelihood().complete(point, normal));
      }
    }
    return draws;
  }
}
