package holdcurve.oracle;

import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.TemperatureRange;

/**
 * A liquid of constant properties, as worked examples use it.
 *
 * @param modulus isothermal and isentropic bulk modulus [Pa]
 * @param constantDensity [kg/m³]
 * @param constantViscosity [Pa·s]
 */
public record TestFluid(double modulus, double constantDensity, double constantViscosity)
    implements Fluid {
  /** The fuel of the closed forms: 0.9 GPa, 740 kg/m³, 0.45 mPa·s. */
  public static final TestFluid FUEL = new TestFluid(0.9e9, 740, 0.45e-3);

  @Override
  public String id() {
    return "test";
  }

  @Override
  public String name() {
    return "Test liquid";
  }

  @Override
  public String source() {
    return "made up";
  }

  @Override
  public TemperatureRange validRange() {
    return new TemperatureRange(250, 350);
  }

  @Override
  public double density(double temperature, double pressure) {
    return constantDensity;
  }

  @Override
  public double bulkModulusIsothermal(double temperature, double pressure) {
    return modulus;
  }

  @Override
  public double bulkModulusIsentropic(double temperature, double pressure) {
    return modulus;
  }

  @Override
  public double thermalExpansion(double temperature) {
    return 1.1e-3;
  }

  @Override
  public double viscosity(double temperature) {
    return constantViscosity;
  }

  @Override
  public double vapourPressure(double temperature) {
    return 5e4;
  }
}
