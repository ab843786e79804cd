/** Page "Cases": all jobs of a garage, and the fault rates that its proven repairs teach. */
package holdcurve.ui.window.cases;
