package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.NetworkAssembler.Detail;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Treating open lines as one place is allowed because it answers alike: within 1 mbar, where a good
 * eye reads a needle to 20 mbar.
 */
class LumpingTest {
  private static final double[] TIMES =
      IntStream.rangeClosed(0, 120).mapToDouble(i -> 5.0 * i).toArray();

  static List<Set<String>> clamps() {
    return List.of(Set.of(), Set.of("feed-hose"), Set.of("return-hose"), Circuits.CLAMPABLE);
  }

  @ParameterizedTest
  @MethodSource("clamps")
  void lumpedHoldAgreesWithFull(Set<String> clamped) {
    Condition leaky =
        Condition.sound(Circuits.SIX_CYLINDER)
            .with(new LeakPath("feed-start", "tank", LaminarLaw.throughPoint(5e-9, 2e5)))
            .with(new LeakPath("rail", "air", LaminarLaw.throughPoint(5e-9, 2e5)));
    HoldSetup setup = HoldSetup.plain(2.05e5).clampedAt(5, clamped);
    double[] lumped = new HoldSimulator(Detail.LUMPED, 1e-7).readings(leaky, setup, TIMES);
    double[] full = new HoldSimulator(Detail.FULL, 1e-7).readings(leaky, setup, TIMES);
    for (int i = 0; i < TIMES.length; i++) {
      assertEquals(full[i], lumped[i], 100, "at " + TIMES[i] + " s");
    }
  }
}
