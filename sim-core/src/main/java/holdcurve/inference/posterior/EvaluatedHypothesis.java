package holdcurve.inference.posterior;

import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.HypothesisModel;
import java.util.List;

/**
 * A hypothesis with what the readings say of it.
 *
 * @param posterior of its coordinates
 * @param logEvidence log of the evidence that is believed [nat]
 */
public record EvaluatedHypothesis(
    Hypothesis hypothesis, HypothesisModel model, LaplacePosterior posterior, double logEvidence) {
  EvaluatedHypothesis withLogEvidence(double log) {
    return new EvaluatedHypothesis(hypothesis, model, posterior, log);
  }

  /** Log of prior weight times believed evidence [nat]. */
  public double logPosterior() {
    return logEvidence() + Math.log(hypothesis.priorWeight());
  }

  /** Value of the k-th fault parameter, over all tests, at a point of all coordinates [SI]. */
  public double parameter(double[] u, int k) {
    return model.latentMap().parameter(u, -1, k);
  }

  /** Draws over all coordinates. */
  public List<double[]> draws(long seed, int count) {
    return posterior.draws(seed, count);
  }
}
