/** What repairs on a list are worth for a job, and in which order to go, for every door. */
package holdcurve.ui.offer;
