package holdcurve.inference.posterior;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Draws over all coordinates of a judged hypothesis. */
public final class PosteriorSampler {
  private PosteriorSampler() {}

  /** Equally likely draws: the sampled coordinates resampled, the rest from their conditional. */
  public static List<double[]> of(EvaluatedHypothesis evaluated, long seed, int count) {
    RandomGenerator random = new Well19937c(seed);
    List<double[]> draws = new ArrayList<>();
    for (double[] sampled : evaluated.evidence().draws().resample(seed, count)) {
      MarginalLikelihood.Point point = evaluated.likelihood().pointPredicted(sampled);
      double[] normal = new double[evaluated.likelihood().conditionalCount()];
      for (int i = 0; i < normal.length; i++) {
        normal[i] = random.nextGaussian();
      }
      draws.add(evaluated.likelihood().complete(point, normal));
    }
    return draws;
  }
}
