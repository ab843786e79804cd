package holdcurve.bench.flowsheet;

import holdcurve.common.input.Require;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.part.Regulator;
import java.util.Optional;

/**
 * The circumstances in which an injector's flow is stated.
 *
 * @param pressure across the injector: rail less what it sprays into [Pa]
 * @param fluid what flows
 * @param temperature of the fluid [K]
 */
public record FlowPoint(double pressure, Fluid fluid, double temperature) {
  /** Fuel of the car while nobody says otherwise: 20 °C [K]. */
  private static final double ROOM_TEMPERATURE = 293.15;

  public FlowPoint {
    Require.positive(pressure, "pressure across the injector", "Pa");
    fluid.validRange().require(temperature, fluid.name());
  }

  /**
   * Where the injectors of a circuit work with the engine stopped: at its set pressure, with its
   * fuel.
   *
   * @param temperature of the fuel [K]
   * @return empty if the circuit has no regulator
   */
  public static Optional<FlowPoint> in(Circuit circuit, double temperature) {
    return circuit.partsOf(Regulator.KIND).stream()
        .findFirst()
        .map(part -> new FlowPoint(part.value(Regulator.SET), circuit.fluid(), temperature));
  }

  /** Where the injectors of a sheet will work; at the bench's point without a regulator. */
  public static FlowPoint of(Circuit circuit, BenchSheet sheet) {
    return in(circuit, ROOM_TEMPERATURE).orElseGet(() -> sheet.bench(sheet.latest()).point());
  }

  /** Density of the fluid here [kg/m³]. */
  public double density() {
    return fluid.density(temperature, pressure + Fluid.ATMOSPHERE);
  }

  /** Viscosity of the fluid here [Pa·s]. */
  double viscosity() {
    return fluid.viscosity(temperature);
  }

  /**
   * What a volume flow at this point is to be multiplied by to have it at another: √(Δp₂/Δp₁) ·
   * √(ρ₁/ρ₂) [-]. An injector's spray holes are turbulent, so its flow goes with the root of the
   * pressure and against the root of the density.
   */
  public double factorTo(FlowPoint other) {
    return Math.sqrt(other.pressure / pressure * density() / other.density());
  }
}
