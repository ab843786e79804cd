package holdcurve.physics.balance;

/**
 * What one cause took of a fall, over all that is still possible.
 *
 * @param cause the cause
 * @param pressure its part of the fall [Pa]; negative where it held the needle up
 * @param volume fuel or room that it took [m³]
 */
public record FallShare(Cause cause, Amount pressure, Amount volume) {}
