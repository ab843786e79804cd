/**
 * The steps from parts on the bench to the first pressurisation, each ticked with date and name.
 */
package holdcurve.record.refit;
