/**
 * How readings scatter about a curve: reading error, correlated model error, and how much a test
 * counts.
 */
package holdcurve.inference.noise;
