/**
 * Volume flow through one passage as a smooth, monotone function of the pressure difference across
 * it: leaks, restrictions and pipes. {@link holdcurve.physics.flow.FlowLaw} is the contract;
 * geometry that leads to a law stands in {@link holdcurve.physics.flow.TubePassage} and {@link
 * holdcurve.physics.flow.GapPassage}, which know where a laminar law stops being true.
 *
 * <p>Which law: a fine tube or gap is laminar, a short hole is an orifice, a hose or line is a
 * pipe, a closed valve that seals better the harder it is pressed is a seat, a hose joint that
 * lifts is an opening joint. The power law is for what none of these fits.
 */
package holdcurve.physics.flow;
