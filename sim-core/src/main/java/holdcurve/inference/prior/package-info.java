/** What is believed before any reading: rates of faults, spreads of unknowns. */
package holdcurve.inference.prior;
