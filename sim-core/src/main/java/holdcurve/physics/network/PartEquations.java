package holdcurve.physics.network;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;

/** A kind of part with equations. One without, such as a tank or a sound joint, brings none. */
public interface PartEquations extends PartKind {
  /**
   * Adds the storage, flow paths and states of {@code part} to a network under construction. What
   * it adds depends on the part, the fluid and the operation alone, and among the operation's
   * clamps on its own at most.
   */
  void assemble(Part part, NetworkBuilder network);
}
