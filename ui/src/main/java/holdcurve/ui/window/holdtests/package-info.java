/** The page where a hold is read off the gauge, typed in or imported, and judged meanwhile. */
package holdcurve.ui.window.holdtests;
