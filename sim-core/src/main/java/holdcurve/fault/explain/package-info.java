/**
 * Faults explained to a person: what they do, how bad they can be, what a hold with them looks
 * like.
 */
package holdcurve.fault.explain;
