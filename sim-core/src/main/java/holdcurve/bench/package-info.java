/**
 * Injectors off the car and drop tests on it, by their own arithmetic. Uses {@code physics} and
 * {@code record}; nothing of {@code advice}.
 */
package holdcurve.bench;
