package holdcurve.model;

import holdcurve.circuit.Part;
import holdcurve.circuit.PartKind;

/** A kind of part with equations. One without, such as a tank or a sound joint, brings none. */
public interface PartEquations extends PartKind {
  /** Adds the storage, flow paths and states of {@code part} to a network under construction. */
  void assemble(Part part, NetworkBuilder network);
}
