/**
 * Why a suspect is likely: residuals by part of the log, prior penalties, the parts of the fall,
 * and whether the best model explains the log at all.
 */
package holdcurve.inference.explain;
