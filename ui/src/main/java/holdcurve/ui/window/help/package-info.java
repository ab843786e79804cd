/** The guide, the version, and the report of a problem, each in a window of its own. */
package holdcurve.ui.window.help;
