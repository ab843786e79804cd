/** One car in the workshop: circuit, gauge, tests, findings, repairs. */
package holdcurve.record.job;
