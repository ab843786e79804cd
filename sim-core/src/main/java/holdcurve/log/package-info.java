/**
 * Gauge logs: what a person or a logger wrote down while the circuit held, or failed to hold.
 *
 * <p>{@link holdcurve.log.GaugeLogReader} takes a text table in any of the usual shapes and says in
 * plain sentences what it understood; {@link holdcurve.log.GaugeLogWriter} writes the one canonical
 * shape. Between them stands {@link holdcurve.log.GaugeLog}, in SI units.
 */
package holdcurve.log;
