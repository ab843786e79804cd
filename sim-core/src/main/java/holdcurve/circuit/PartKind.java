package holdcurve.circuit;

import holdcurve.model.NetworkBuilder;
import java.util.List;

/**
 * What all parts of one kind have in common: their name in files, their properties, and the
 * equations they bring.
 */
public interface PartKind {
  /** The {@code kind} in circuit files, such as {@code hose}. */
  String id();

  /** The name shown to people, such as "Hose". */
  String title();

  Ports ports();

  /** The properties that a part of this kind has, in the order they are shown. */
  List<Property> properties();

  /** Adds the storage, flow paths and states of {@code part} to a network under construction. */
  void assemble(Part part, NetworkBuilder network);
}
