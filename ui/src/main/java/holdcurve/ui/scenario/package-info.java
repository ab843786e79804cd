/** The scenarios shipped with the program, for every door. */
package holdcurve.ui.scenario;
