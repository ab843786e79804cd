/** A circuit drawn with symbols in the manner of ISO 1219-1: where everything stands, as data. */
package holdcurve.ui.schematic;
