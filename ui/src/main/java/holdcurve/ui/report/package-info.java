/** The report of a job as a page that prints: HTML, and the same as PDF. */
package holdcurve.ui.report;
