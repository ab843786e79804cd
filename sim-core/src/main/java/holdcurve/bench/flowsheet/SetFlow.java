package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;

/**
 * The static flows of a set together.
 *
 * @param mean at the circuit's pressure and with its fuel [m³/s]; its interval holds what all flows
 *     of the bench share
 * @param spread largest less smallest, as a share of the mean [-]
 * @param count injectors measured
 */
public record SetFlow(Interval mean, double spread, int count) {}
