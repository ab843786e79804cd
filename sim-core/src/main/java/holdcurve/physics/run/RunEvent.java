package holdcurve.physics.run;

/**
 * Something that happened in a run.
 *
 * @param time since the pump stop [s]
 * @param what in plain words
 */
public record RunEvent(double time, String what) {}
