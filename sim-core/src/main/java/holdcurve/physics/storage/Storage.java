package holdcurve.physics.storage;

import java.util.List;

/**
 * Liquid volume held by a node as a function of its pressure alone. Implementations are immutable;
 * volume rises with pressure and is continuously differentiable.
 */
public interface Storage {
  /**
   * @param pressure gauge [Pa]
   * @return volume taken up beyond that at zero gauge pressure [m³]
   */
  double volume(double pressure);

  /**
   * @param pressure gauge [Pa]
   * @return dV/dp [m³/Pa], never negative
   */
  double capacity(double pressure);

  /**
   * @param pressure gauge [Pa]
   * @return d²V/dp² [m³/Pa²]
   */
  double capacitySlope(double pressure);

  /**
   * Whether the capacity changes so much between two pressures that a step from one to the other
   * can't see how: the rates at its ends know nothing of what lies between.
   *
   * @param from gauge [Pa]; likewise {@code to}
   */
  default boolean isJumped(double from, double to) {
    return false;
  }

  /** Several storages at the same pressure. */
  static Storage sum(List<? extends Storage> parts) {
    return new StorageSum(List.copyOf(parts));
  }
}
