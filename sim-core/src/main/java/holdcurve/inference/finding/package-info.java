/**
 * What was found out about a circuit beside the gauge readings of a hold, as the likelihood sees
 * it.
 */
package holdcurve.inference.finding;
