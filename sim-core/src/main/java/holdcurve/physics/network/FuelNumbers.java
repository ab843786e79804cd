package holdcurve.physics.network;

import holdcurve.physics.fluid.Fluid;

/**
 * What a network needs to know of its fuel.
 *
 * @param expansion α [1/K]
 * @param modulus K, isothermal for slow changes and isentropic for fast ones [Pa]
 * @param vapourPressure absolute [Pa]
 */
record FuelNumbers(double expansion, double modulus, double vapourPressure) {
  static FuelNumbers of(Fluid fluid, Operation operation) {
    double temperature = operation.fuelTemperature();
    return new FuelNumbers(
        fluid.thermalExpansion(temperature),
        operation.pace() == Pace.FAST
            ? fluid.bulkModulusIsentropic(temperature, Fluid.ATMOSPHERE)
            : fluid.bulkModulusIsothermal(temperature, Fluid.ATMOSPHERE),
        fluid.vapourPressure(temperature));
  }
}
