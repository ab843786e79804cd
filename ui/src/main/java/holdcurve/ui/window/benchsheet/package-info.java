/** The page on which a flow-bench sheet is filled in and judged. */
package holdcurve.ui.window.benchsheet;
