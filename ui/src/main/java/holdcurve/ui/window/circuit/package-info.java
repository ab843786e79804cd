/** The page that draws the circuit with ISO 1219-1 style symbols and lets its parts be edited. */
package holdcurve.ui.window.circuit;
