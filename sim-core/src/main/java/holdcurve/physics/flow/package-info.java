/**
 * Volume flow through one passage as a smooth, monotone function of the pressure difference across
 * it: leaks, restrictions and pipes. {@link holdcurve.physics.flow.FlowLaw} is the contract.
 *
 * <p>Which law: a fine tube or gap is laminar, a short hole is an orifice, a hose or line is a
 * pipe, a closed valve that seals better the harder it is pressed is a seat, a hose joint that
 * lifts is an opening joint.
 */
package holdcurve.physics.flow;
