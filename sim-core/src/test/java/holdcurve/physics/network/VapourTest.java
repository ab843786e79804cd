package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.TestFluid;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import org.junit.jupiter.api.Test;

/** Below the vapour pressure a node fills with vapour instead of falling further. */
class VapourTest {
  private static final double VAPOUR = TestFluid.FUEL.vapourPressure(293.15) - 101_325;
  private static final double SUCTION = -9e4;
  private static final double CONDUCTANCE = 1e-11;

  /**
   * Liquid drawn off by a suction of 0.9 bar below the surroundings: from the vapour pressure on it
   * flows at a steady G (p_v − p_s), and its room is taken by vapour.
   */
  @Test
  void pressureSettlesThereWhileLiquidIsDrawnOff() {
    Operation suction = Operation.holding().withEngine(0, SUCTION);
    Network network =
        Vessel.leakingTo(Circuit.MANIFOLD, suction, Detail.LEDGER, new LaminarLaw(CONDUCTANCE));
    double[] y = network.stateAt(point -> 1e5, 0, 0);
    double before = network.storedVolume(y);
    double steady = CONDUCTANCE * (VAPOUR - SUCTION);
    double time = 4e-6 / steady;
    new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS4.tableau(), Tolerances.relative(1e-8, network.layout().scales()))
        .integrate(network, 0, y, time, new double[0], new double[0][]);
    assertEquals(VAPOUR, y[0], 3e3, "pressure after a tenth of the liquid has gone");
    double drawn = y[network.layout().node(Circuit.MANIFOLD).row()];
    assertEquals(4e-6, drawn, 0.1 * 4e-6, "drawn off [m³]");
    assertEquals(before - drawn, network.storedVolume(y), 1e-12, "what is left [m³]");
  }

  /** Far above, the liquid and its wall are all there is: V/K + wall. */
  @Test
  void costsNothingUnderPressure() {
    Network network = Vessel.leakingBy();
    for (double p = 0; p <= 4e5; p += 1e4) {
      assertEquals(Vessel.CAPACITY, network.capacity(0, p), 1e-12 * Vessel.CAPACITY);
    }
    assertTrue(network.capacity(0, VAPOUR) > 1e4 * Vessel.CAPACITY);
  }
}
