package holdcurve.physics.storage;

import holdcurve.common.input.Require;
import java.util.Objects;

/**
 * Gas shut in with the liquid, p Vⁿ constant in absolute pressure: trapped air, or the gas side of
 * a charged accumulator, whose end stop keeps the liquid out below the charge pressure.
 *
 * <p>The end stop is rounded: the gas feels p₀ + w S((p − p₀)/w) with the softplus S, so a charged
 * spring softens in over a few widths w. Trapped air has no stop. Below 1 kPa absolute the volume
 * goes on along its tangent, so that an integrator's trial step finds a finite value.
 */
public final class GasSpring implements Storage {
  private static final double LOWEST_ABSOLUTE = 1_000;
  private static final double ATMOSPHERE = 101_325;

  private final double gasVolume;
  private final double charge;
  private final double inverseExponent;
  private final EndStop stop;
  private final double atZero;

  private GasSpring(double gasVolume, double charge, double exponent, EndStop stop) {
    this.gasVolume = Require.notNegative(gasVolume, "gas volume", "m³");
    this.charge = Require.positive(charge, "absolute gas pressure", "Pa");
    this.inverseExponent = 1 / Require.within(exponent, 1, 1.7, "polytropic exponent", "-");
    this.stop = stop;
    this.atZero = gas(0);
  }

  /**
   * Air trapped in a line.
   *
   * @param volume at atmospheric pressure [m³]
   * @param exponent n [-]: 1 slow (isothermal) to 1.4 fast (adiabatic)
   */
  public static GasSpring trappedAir(double volume, double exponent) {
    return new GasSpring(volume, ATMOSPHERE, exponent, EndStop.NONE);
  }

  /**
   * A charged accumulator or gas damper.
   *
   * @param volume of gas at the charge pressure [m³]
   * @param charge gauge [Pa]
   * @param exponent n [-], 1 slow to 1.4 fast
   * @param width over which the end stop is left [Pa]
   */
  public static GasSpring charged(double volume, double charge, double exponent, double width) {
    Require.positive(width, "end stop width", "Pa");
    return new GasSpring(volume, charge + ATMOSPHERE, exponent, new EndStop(charge, width));
  }

  /**
   * Volume of the gas itself.
   *
   * @param pressure gauge [Pa]
   * @return [m³]
   */
  public double gas(double pressure) {
    double felt = absolute(pressure);
    double known = Math.max(felt, LOWEST_ABSOLUTE);
    double volume = gasVolume * compression(known);
    return volume * (1 - inverseExponent * (felt - known) / known);
  }

  @Override
  public double volume(double pressure) {
    return atZero - gas(pressure);
  }

  @Override
  public double capacity(double pressure) {
    return stiffnessFree(absolute(pressure)) * stop.share(pressure);
  }

  @Override
  public double capacitySlope(double pressure) {
    double felt = absolute(pressure);
    double share = stop.share(pressure);
    double capacity = stiffnessFree(felt);
    double bend = felt < LOWEST_ABSOLUTE ? 0 : -capacity * (inverseExponent + 1) / felt;
    return bend * share * share + capacity * stop.shareSlope(pressure);
  }

  @Override
  public boolean isJumped(double from, double to) {
    return stop.isJumped(from, to);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GasSpring that
        && gasVolume == that.gasVolume
        && charge == that.charge
        && inverseExponent == that.inverseExponent
        && stop.equals(that.stop);
  }

  @Override
  public int hashCode() {
    return Objects.hash(gasVolume, charge, inverseExponent, stop);
  }

  /** V over V at the charge pressure [-]; slow air, the usual case, needs no power. */
  private double compression(double absolute) {
    double ratio = charge / absolute;
    return inverseExponent == 1 ? ratio : Math.pow(ratio, inverseExponent);
  }

  private double absolute(double pressure) {
    return stop.felt(pressure) + ATMOSPHERE;
  }

  /** dV/dp of the gas without the end stop [m³/Pa] at an absolute pressure [Pa]. */
  private double stiffnessFree(double absolute) {
    double known = Math.max(absolute, LOWEST_ABSOLUTE);
    return gasVolume * inverseExponent * compression(known) / known;
  }
}
