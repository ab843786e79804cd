/**
 * A circuit as described: parts with typed properties, joined at points; and a circuit in some
 * condition.
 */
package holdcurve.physics.circuit;
