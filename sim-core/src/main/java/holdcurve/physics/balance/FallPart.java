package holdcurve.physics.balance;

/**
 * What one cause took from the fuel that stands in one with the gauge; negative where it gave.
 *
 * @param pressure its part of the fall [Pa]
 * @param volume fuel or room that it took [m³]
 */
public record FallPart(double pressure, double volume) {
  /** Nothing. */
  public static final FallPart NONE = new FallPart(0, 0);

  /** Both together. */
  public FallPart plus(FallPart other) {
    return new FallPart(pressure + other.pressure, volume + other.volume);
  }
}
