/** The page "What if": changes tried before anything is bought or taken apart. */
package holdcurve.ui.window.whatif;
