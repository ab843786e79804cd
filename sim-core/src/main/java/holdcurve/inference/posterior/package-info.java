/**
 * Each hypothesis with its evidence, and draws of the circuit state that further questions are
 * asked of.
 */
package holdcurve.inference.posterior;
