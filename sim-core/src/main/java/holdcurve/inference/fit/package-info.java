/**
 * Where a hypothesis fits best: Levenberg-Marquardt on the latent coordinates, scales from the
 * marginal likelihood.
 */
package holdcurve.inference.fit;
