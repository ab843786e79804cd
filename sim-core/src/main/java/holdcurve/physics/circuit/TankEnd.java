package holdcurve.physics.circuit;

/** Which end of a part has to lead to a tank. */
public enum TankEnd {
  NEITHER,
  /** It draws from the tank. */
  FROM,
  /** It spills to the tank. */
  TO
}
