/**
 * The window. {@link holdcurve.ui.window.WindowLauncher} is the way in; {@link
 * holdcurve.ui.window.HoldcurveWindow} lists the pages. Each page has a sub-package with its view
 * and its view model; a view model knows no control, so it is tested without a screen.
 */
package holdcurve.ui.window;
