package holdcurve.infer;

import holdcurve.evidence.Evidence;

/**
 * A hypothesis with what the readings say of it.
 *
 * @param likelihood its likelihood, the near-linear unknowns integrated out; null where the model
 *     failed from the start
 * @param evidence of the hypothesis, with posterior draws of the sampled coordinates
 */
record Judged(
    Hypothesis hypothesis,
    HypothesisModel model,
    MarginalLikelihood likelihood,
    Evidence evidence) {
  /** Log of the evidence that is believed [nat]. */
  double logEvidence() {
    return evidence.logEvidence();
  }

  Judged withLogEvidence(double log) {
    return new Judged(hypothesis, model, likelihood, evidence.withLogEvidence(log));
  }

  /** Log of prior weight times believed evidence [nat]. */
  double logPosterior() {
    return logEvidence() + Math.log(hypothesis.priorWeight());
  }

  /** Value of the k-th fault parameter, over all tests [SI]. */
  double parameter(double[] sampled, int k) {
    return model.realisation().parameter(spread(sampled), -1, k);
  }

  private double[] spread(double[] sampled) {
    Latents latents = model.realisation().latents();
    double[] u = new double[latents.dimension()];
    int[] places = latents.sampled();
    for (int i = 0; i < places.length; i++) {
      u[places[i]] = sampled[i];
    }
    return u;
  }
}
