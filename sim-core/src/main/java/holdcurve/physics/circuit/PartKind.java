package holdcurve.physics.circuit;

import java.util.List;

/**
 * What all parts of one kind have in common: their name in files and their properties. A kind whose
 * parts store or pass fuel also brings their equations ({@code
 * holdcurve.physics.network.PartEquations}).
 */
public interface PartKind {
  /** The {@code kind} in circuit files, such as {@code hose}. */
  String id();

  /** The name shown to people, such as "Hose". */
  String title();

  Ports ports();

  /** Whether fuel passes either way while the pump is off, as through a hose. */
  default boolean isOpen() {
    return ports() == Ports.TWO;
  }

  /** Whether a line may end at it, as at a damper; a mere joint leaves the line open. */
  default boolean closesLine() {
    return ports() == Ports.ONE;
  }

  /** Which of its ends has to lead to a tank. */
  default TankEnd tankEnd() {
    return TankEnd.NEITHER;
  }

  /** The properties that a part of this kind has, in the order they are shown. */
  List<Property> properties();
}
