/** Readings made ready for a likelihood: checked, averaged, with the operation of each test. */
package holdcurve.inference.data;
