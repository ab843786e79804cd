package holdcurve.physics.network;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import holdcurve.oracle.Circuits;
import holdcurve.oracle.TestFluid;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import holdcurve.physics.part.Rail;
import holdcurve.physics.part.RigidPipe;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Two temperatures in one circuit. */
class RegionTest {
  private static final double ROOM = Operation.ROOM_TEMPERATURE;

  /**
   * Closed form: in one rigid volume C dp/dt = α Σ V dθ/dt, so with each θ relaxing on its own p −
   * p₀ = −(α/C) Σ V θ₀ (1 − e^(−t/τ)).
   */
  @Test
  void eachRegionRelaxesOnItsOwn() {
    Network network = railAndFloorPipe();
    double alpha = TestFluid.FUEL.thermalExpansion(ROOM);
    double pipe = Math.PI / 4 * 36e-6 * 2;
    double[] y = network.stateAt(point -> 1e5, 0, -4);
    y[network.layout().warmthRow(Region.FLOOR)] = 3;
    double time = 300;
    new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS4.tableau(), Tolerances.relative(1e-9, network.layout().scales()))
        .integrate(network, 0, y, time, new double[0], new double[0][]);
    double gain =
        100e-6 * 4 * -Math.expm1(-time / Region.ENGINE.timeConstant())
            - pipe * 3 * -Math.expm1(-time / Region.FLOOR.timeConstant());
    double capacity = network.capacity(0, 1e5);
    assertNear(1e5 + alpha * gain / capacity, y[0], 1e-6, "pressure");
    assertNear(3 * Math.exp(-time / 480), y[network.layout().warmthRow(Region.FLOOR)], 1e-6, "θ");
  }

  @Test
  void aCircuitWithNothingUnderTheFloorHasOneTemperature() {
    Network network =
        NetworkAssembler.assemble(
            Condition.sound(Circuits.SIX_CYLINDER), Operation.holding(), Detail.LUMPED);
    assertEquals(-1, network.layout().warmthRow(Region.FLOOR));
    assertFalse(network.layout().warmthRow() < 0);
  }

  /** In the lumped network the two parts share a node. */
  private static Network railAndFloorPipe() {
    Part rail = Part.of(Rail.KIND, "rail", "a", "a", Map.of(Rail.VOLUME, 100e-6));
    Part pipe =
        Part.of(
            RigidPipe.KIND,
            "pipe",
            "a",
            "b",
            Map.of(RigidPipe.LENGTH, 2.0, RigidPipe.BORE, 6e-3, RigidPipe.UNDER_FLOOR, 1.0));
    Circuit circuit = new Circuit("two regions", TestFluid.FUEL, List.of(rail, pipe));
    return NetworkAssembler.assemble(Condition.sound(circuit), Operation.holding(), Detail.LUMPED);
  }
}
