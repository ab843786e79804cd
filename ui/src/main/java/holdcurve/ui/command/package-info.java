/** One class a command, and what their outputs share. */
package holdcurve.ui.command;
