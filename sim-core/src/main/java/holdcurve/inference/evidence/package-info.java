/**
 * Posterior probabilities of rival models from their evidences, and summaries of weighted draws.
 * All evidences are natural logarithms [nat].
 */
package holdcurve.inference.evidence;
