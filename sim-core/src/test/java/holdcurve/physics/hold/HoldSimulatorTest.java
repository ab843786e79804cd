package holdcurve.physics.hold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HoldSimulatorTest {
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));
  private static final double[] TIMES =
      IntStream.rangeClosed(0, 60).mapToDouble(i -> 10.0 * i).toArray();

  @Test
  void lumpedAgreesWithFull() {
    Condition leaky =
        Condition.sound(CIRCUIT)
            .with(new LeakPath("feed-start", "tank", LaminarLaw.throughPoint(0.3e-6 / 60, 2e5)));
    HoldSetup setup = HoldSetup.plain(2.05e5).clampedAt(5, Set.of("return-hose"));
    double[] lumped = new HoldSimulator().readings(leaky, setup, TIMES);
    double[] full = new HoldSimulator(Detail.FULL, 1e-7).readings(leaky, setup, TIMES);
    assertArrayEquals(full, lumped, 20);
  }
}
