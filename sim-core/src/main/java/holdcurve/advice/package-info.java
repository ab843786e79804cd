/**
 * What follows from a posterior: the next test, what a change would do, whether a repair holds,
 * what can be said while the gauge is read. Uses {@code inference} and below.
 */
package holdcurve.advice;
