/**
 * The case book: a garage's jobs side by side, and what its proven repairs say about fault rates.
 */
package holdcurve.casebook;
