/**
 * What a flow bench says of a set of injectors: flows carried over to the circuit's pressure and
 * fuel, how far each is out of line, what a service brought, and what it all means for the engine.
 *
 * <p>Words as in SAE J1832: static flow (held open), dynamic flow (per pulse), linear range, slope
 * and offset.
 */
package holdcurve.bench.flowsheet;
