/** Plots of holds, for every page: what is shown is decided in {@link HoldPlot}, apart from how. */
package holdcurve.ui.window.plot;
