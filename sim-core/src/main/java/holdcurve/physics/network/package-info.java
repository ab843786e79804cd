/**
 * A circuit as equations: nodes, elements, and the right-hand side they add up to. Start at {@link
 * holdcurve.physics.network.Network}.
 */
package holdcurve.physics.network;
