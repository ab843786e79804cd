/**
 * Model evidence by Laplace's approximation, draws from the posterior, and probabilities of rival
 * models.
 *
 * <p>Everything here works on latent coordinates u with the prior N(0, I); callers map u to their
 * own parameters. The evidence is the prior average of the likelihood, Z = E[L(u)]; all evidences
 * are natural logarithms [nat]. Seeds are given as arguments: the same seed gives the same draws on
 * any thread. No evidence and no probability depends on one.
 */
package holdcurve.inference.evidence;
