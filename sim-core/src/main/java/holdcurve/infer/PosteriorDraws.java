package holdcurve.infer;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Draws over all coordinates of a judged hypothesis. */
final class PosteriorDraws {
  private PosteriorDraws() {}

  /** Equally likely draws: the sampled coordinates resampled, the rest from their conditional. */
  static List<double[]> of(Judged judged, long seed, int count) {
    RandomGenerator random = new Well19937c(seed);
    List<double[]> draws = new ArrayList<>();
    for (double[] sampled : judged.evidence().draws().resample(seed, count)) {
      MarginalLikelihood.Point point = judged.likelihood().pointForeseen(sampled);
      double[] normal = new double[judged.likelihood().conditionalCount()];
      for (int i = 0; i < normal.length; i++) {
        normal[i] = random.nextGaussian();
      }
      draws.add(judged.likelihood().complete(point, normal));
    }
    return draws;
  }
}
