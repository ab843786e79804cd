package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the boundaries received and what the circuit holds always add up to the same volume. */
class MassBalanceTest {
  private static final Condition LEAKY =
      Condition.sound(Circuits.SIX_CYLINDER)
          .with(new LeakPath("rail", Circuit.AIR, OrificeLaw.throughPoint(2e-8, 2e5, 100)));

  private static final double LIQUID = 0.4e-3;

  @Test
  void fuelIsNeitherMadeNorLostThroughPrimeStopAndClamps() {
    Operation hold = Operation.holding();
    Operation[] operations = {
      hold.withPump(true),
      hold.withPump(true).withEngine(0.1, -4e4),
      hold,
      hold.withClamps(Set.of("return-hose"), 0),
      hold.withClamps(Circuits.CLAMPABLE, 1e-17)
    };
    double[] ends = {20, 25, 31, 100, 600};
    Network network = NetworkAssembler.assemble(LEAKY, operations[0], Detail.LEDGER);
    double[] y = network.stateAt(point -> 0, 0, 3);
    double before = VolumeBalance.total(network, y);
    double time = 0;
    for (int i = 0; i < operations.length; i++) {
      Network next = NetworkAssembler.assemble(LEAKY, operations[i], Detail.LEDGER);
      y = next.carryOver(y, network);
      network = next;
      run(network, time, y, ends[i]);
      time = ends[i];
      assertEquals(before, VolumeBalance.total(network, y), 1e-9 * LIQUID, "at " + time + " s");
    }
    Node tank = network.layout().node("tank");
    assertTrue(received(network, "air", y) > 1e-6, "the leak ran");
    assertTrue(y[tank.row()] < 0, "the tank gave what is held and what leaked");
  }

  private static double received(Network network, String boundary, double[] y) {
    return y[network.layout().node(boundary).row()];
  }

  private static void run(Network network, double from, double[] y, double to) {
    double[] floor = network.layout().scales();
    new LeanRosenbrockDriver(RosenbrockMethod.RODAS5P.tableau(), Tolerances.relative(1e-9, floor))
        .integrate(network, from, y, to, new double[0], new double[0][]);
  }
}
