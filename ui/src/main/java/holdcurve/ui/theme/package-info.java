/** Colours by role, light and dark, and size of text. */
package holdcurve.ui.theme;
