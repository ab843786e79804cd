/** The program: the command line and the way into the window. */
package holdcurve.ui;
