/** The open job and its ranking, shared by all pages. */
package holdcurve.ui.window.job;
