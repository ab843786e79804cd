/**
 * The likelihood of one hypothesis: from latent coordinates to a circuit, to curves, to residuals.
 * Start at {@link holdcurve.inference.likelihood.HypothesisModel}.
 */
package holdcurve.inference.likelihood;
