package holdcurve.infer;

import holdcurve.evidence.Evidence;

/**
 * A hypothesis with what the readings say of it.
 *
 * @param likelihood its likelihood, the near-linear unknowns integrated out; null where the model
 *     failed from the start
 * @param evidence of the hypothesis, with posterior draws of the sampled coordinates
 * @param found log likelihood of what was found beside the gauge, where it fits best [nat]
 */
record Judged(
    Hypothesis hypothesis,
    HypothesisModel model,
    MarginalLikelihood likelihood,
    Evidence evidence,
    double found) {
  /** Findings less likely than that are given up on, where a hypothesis fails altogether [nat]. */
  private static final double LEAST_FOUND = -1e3;

  static Judged of(JobModel data, Fitted fit, MarginalLikelihood likelihood, Evidence evidence) {
    Judged judged = new Judged(fit.hypothesis(), fit.model(), likelihood, evidence, 0);
    double found = data.sideCount() == 0 ? 0 : Profile.found(data, judged);
    return new Judged(
        fit.hypothesis(), fit.model(), likelihood, evidence, Math.max(found, LEAST_FOUND));
  }

  /** Log of the evidence that is believed [nat]. */
  double logEvidence() {
    return evidence.logEvidence();
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
