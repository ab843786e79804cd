package holdcurve.physics.storage;

import holdcurve.common.input.Require;

/**
 * Storage in proportion to pressure: liquid at low pressure, metal and hose walls.
 *
 * @param constant dV/dp [m³/Pa]
 */
public record LinearStorage(double constant) implements Storage {
  public LinearStorage {
    Require.notNegative(constant, "capacity", "m³/Pa");
  }

  /**
   * A volume of liquid: V/K.
   *
   * @param volume [m³]
   * @param bulkModulus [Pa]; the isothermal one for slow changes
   */
  public static LinearStorage liquid(double volume, double bulkModulus) {
    return new LinearStorage(
        Require.notNegative(volume, "volume", "m³")
            / Require.positive(bulkModulus, "bulk modulus", "Pa"));
  }

  @Override
  public double volume(double pressure) {
    return constant * pressure;
  }

  @Override
  public double capacity(double pressure) {
    return constant;
  }

  @Override
  public double capacitySlope(double pressure) {
    return 0;
  }
}
