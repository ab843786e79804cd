/** One class a kind of part: its properties and what it adds to the equations. */
package holdcurve.physics.part;
