/**
 * Gauge logs: what a person or a logger wrote down while the circuit held, or failed to hold.
 *
 * <p>{@link holdcurve.record.log.GaugeLogReader} takes a text table in any of the usual shapes and
 * says in plain sentences what it understood; {@link holdcurve.record.log.GaugeLogWriter} writes
 * the one canonical shape. Between them stands {@link holdcurve.record.log.GaugeLog}, in SI units.
 */
package holdcurve.record.log;
