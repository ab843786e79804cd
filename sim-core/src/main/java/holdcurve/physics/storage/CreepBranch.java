package holdcurve.physics.storage;

import holdcurve.common.input.Require;

/**
 * One Kelvin–Voigt element of a creeping hose wall: spring and dashpot side by side. Its own volume
 * v is a state, dv/dt = (c p − v)/τ. Several in a row with a {@link LinearStorage} make a
 * generalised standard linear solid. A hold that falls by creep alone levels off.
 *
 * @param compliance c, volume per pressure in the end [m³/Pa]
 * @param relaxationTime τ [s]
 */
public record CreepBranch(double compliance, double relaxationTime) {
  public CreepBranch {
    Require.notNegative(compliance, "creep compliance", "m³/Pa");
    Require.positive(relaxationTime, "relaxation time", "s");
  }

  /**
   * Uptake of the branch.
   *
   * @param pressure gauge [Pa]
   * @param volume taken up so far [m³]
   * @return [m³/s]
   */
  public double rate(double pressure, double volume) {
    return (compliance * pressure - volume) / relaxationTime;
  }

  /** Partial derivative of {@link #rate} with respect to pressure [m³/(s·Pa)]. */
  public double rateByPressure() {
    return compliance / relaxationTime;
  }

  /** Partial derivative of {@link #rate} with respect to volume [1/s]. */
  public double rateByVolume() {
    return -1 / relaxationTime;
  }

  /**
   * Volume after a pressure held from time zero, starting relaxed: c p (1 − e^(−t/τ)).
   *
   * @param pressure gauge [Pa]
   * @param time [s], zero or more
   * @return [m³]
   */
  public double stepResponse(double pressure, double time) {
    return -compliance * pressure * Math.expm1(-time / relaxationTime);
  }
}
