package holdcurve.model;

import holdcurve.fluid.Fluid;
import holdcurve.fluid.TemperatureRange;

/** A liquid of constant properties, as worked examples use it: 0.9 GPa, 740 kg/m³, 0.45 mPa·s. */
final class PlainFuel implements Fluid {
  static final double MODULUS = 0.9e9;
  static final double DENSITY = 740;
  static final double VISCOSITY = 0.45e-3;

  @Override
  public String id() {
    return "plain";
  }

  @Override
  public String name() {
    return "Plain fuel";
  }

  @Override
  public TemperatureRange validRange() {
    return new TemperatureRange(250, 350);
  }

  @Override
  public double density(double temperature, double pressure) {
    return DENSITY;
  }

  @Override
  public double bulkModulusIsothermal(double temperature, double pressure) {
    return MODULUS;
  }

  @Override
  public double bulkModulusIsentropic(double temperature, double pressure) {
    return MODULUS;
  }

  @Override
  public double thermalExpansion(double temperature) {
    return 1.1e-3;
  }

  @Override
  public double viscosity(double temperature) {
    return VISCOSITY;
  }

  @Override
  public double vapourPressure(double temperature) {
    return 5e4;
  }
}
