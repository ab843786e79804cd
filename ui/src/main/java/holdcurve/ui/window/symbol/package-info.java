/** Symbols of parts on the screen. */
package holdcurve.ui.window.symbol;
