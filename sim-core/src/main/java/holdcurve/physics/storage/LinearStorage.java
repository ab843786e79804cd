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
