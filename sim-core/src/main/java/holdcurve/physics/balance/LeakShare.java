package holdcurve.physics.balance;

/**
 * What one leak took of a fall, if the explanation that has it is the true one.
 *
 * @param suspect id of the explanation
 * @param name of the fault, in plain words
 * @param where it sits
 * @param pressure its part of the fall [Pa]
 * @param volume fuel that it let out of what stands in one with the gauge [m³]
 */
public record LeakShare(
    String suspect, String name, String where, Amount pressure, Amount volume) {}
