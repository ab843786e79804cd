/** The guide: one source in Markdown, read by the window, a browser, a printer and the terminal. */
package holdcurve.ui.guide;
