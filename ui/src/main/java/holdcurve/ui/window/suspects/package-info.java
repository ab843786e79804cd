/** The page that sets measured against simulated pressure, and ranks what explains the fall. */
package holdcurve.ui.window.suspects;
