package holdcurve.physics.hold;

import holdcurve.physics.circuit.Condition;

/** A circuit in some condition and the hold that is done with it. */
public record Hold(Condition condition, HoldSetup setup) {}
