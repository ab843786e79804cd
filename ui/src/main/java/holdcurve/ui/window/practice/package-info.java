/** The page on which a learner looks for a hidden fault. */
package holdcurve.ui.window.practice;
