/**
 * What is considered for a circuit: no fault, each fault at each site, pairs; and which of them the
 * tests can tell apart.
 */
package holdcurve.inference.hypothesis;
