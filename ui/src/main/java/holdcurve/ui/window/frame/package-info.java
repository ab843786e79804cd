/** What surrounds every page: menu, banner, progress, the list of pages, and what a page is. */
package holdcurve.ui.window.frame;
