package holdcurve.training;

/**
 * A fault that an exercise hides.
 *
 * @param fault id of the fault plugin
 * @param site id of the site, empty for the first one the circuit has
 * @param size first parameter of the fault [SI]; not-a-number for a usual one
 */
public record HiddenFault(String fault, String site, double size) {}
