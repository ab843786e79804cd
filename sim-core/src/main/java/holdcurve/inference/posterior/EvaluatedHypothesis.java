package holdcurve.inference.posterior;

import holdcurve.inference.evidence.Evidence;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.Latents;

/**
 * A hypothesis with what the readings say of it.
 *
 * @param likelihood its likelihood, the near-linear unknowns integrated out; null where the model
 *     failed from the start
 * @param evidence of the hypothesis, with posterior draws of the sampled coordinates
 */
public record EvaluatedHypothesis(
    Hypothesis hypothesis,
    HypothesisModel model,
    MarginalLikelihood likelihood,
    Evidence evidence) {
  /** Log of the evidence that is believed [nat]. */
  public double logEvidence() {
    return evidence.logEvidence();
  }

  EvaluatedHypothesis withLogEvidence(double log) {
    return new EvaluatedHypothesis(hypothesis, model, likelihood, evidence.withLogEvidence(log));
  }

  /** Log of prior weight times believed evidence [nat]. */
  public double logPosterior() {
    return logEvidence() + Math.log(hypothesis.priorWeight());
  }

  /** Value of the k-th fault parameter, over all tests [SI]. */
  public double parameter(double[] sampled, int k) {
    return model.latentMap().parameter(spread(sampled), -1, k);
  }

  private double[] spread(double[] sampled) {
    Latents latents = model.latentMap().latents();
    double[] u = new double[latents.dimension()];
    int[] places = latents.sampled();
    for (int i = 0; i < places.length; i++) {
      u[places[i]] = sampled[i];
    }
    return u;
  }
}
