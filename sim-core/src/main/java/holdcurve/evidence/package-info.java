/**
 * Model evidence and posterior draws for cheap models with few parameters (about 1 to 16).
 *
 * <p>Everything here works on latent coordinates u with the prior N(0, I); callers map u to their
 * own parameters. The evidence is the prior average of the likelihood, Z = E[L(u)]; all evidences
 * are natural logarithms [nat].
 *
 * <p>{@link holdcurve.evidence.EvidenceEstimator} is the way in. It finds the modes ({@link
 * holdcurve.evidence.ModeFinder}), samples from Student components placed on them, adapts these,
 * and judges the outcome by effective sample size and Pareto k. Where that judgement is bad it runs
 * tempered sequential Monte Carlo instead. {@link holdcurve.evidence.ModelProbabilities} turns the
 * evidences of rival models into probabilities.
 *
 * <p>All randomness comes from seeds given as arguments, and nothing is shared between calls: the
 * same seed gives the same answer on any thread.
 */
package holdcurve.evidence;
