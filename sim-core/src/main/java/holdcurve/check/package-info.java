/** Argument checks shared by the physics packages. */
package holdcurve.check;
