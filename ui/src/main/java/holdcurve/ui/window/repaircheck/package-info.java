/** The page "Repair check": does it hold now, laid over how it used to; the refit list. */
package holdcurve.ui.window.repaircheck;
