/** What the program is, and what it is made of, for every door. */
package holdcurve.ui.about;
