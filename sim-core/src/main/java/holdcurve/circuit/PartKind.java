package holdcurve.circuit;

import java.util.List;

/**
 * What all parts of one kind have in common: their name in files and their properties. A kind whose
 * parts store or pass fuel also brings their equations ({@code holdcurve.model.PartEquations}).
 */
public interface PartKind {
  /** The {@code kind} in circuit files, such as {@code hose}. */
  String id();

  /** The name shown to people, such as "Hose". */
  String title();

  Ports ports();

  /** The properties that a part of this kind has, in the order they are shown. */
  List<Property> properties();
}
