/**
 * What can be wrong with a circuit: the contract for fault plugins, and how they are found, checked
 * and guarded. Start at {@link holdcurve.fault.LeakFault}. Uses {@code physics} and {@code common}.
 */
package holdcurve.fault;
