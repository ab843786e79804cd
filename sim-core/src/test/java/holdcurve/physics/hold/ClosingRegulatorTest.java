package holdcurve.physics.hold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Regulator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * A regulator that shuts in the middle of a clamped hold: the rail drains through it into a leaking
 * return, minute by minute, until it lets go. Against a run ten thousand times tighter.
 */
class ClosingRegulatorTest {
  private static final double[] TIMES =
      IntStream.rangeClosed(0, 60).mapToDouble(i -> 10.0 * i).toArray();

  private static Hold with(double reseatDrop, double leak) {
    Condition leaky =
        Condition.sound(Circuits.SIX_CYLINDER)
            .with("regulator", Regulator.RESEAT_DROP, reseatDrop)
            .with(new LeakPath("return-start", "air", LaminarLaw.throughPoint(leak, 2e5)));
    HoldSetup setup =
        new HoldSetup(1.95e5, 20, 0, Operation.holding(), Circuits.CLAMPABLE, 5, 1e-15, 0.16e-6);
    return new Hold(leaky, setup);
  }

  /**
   * Sensitivities for each hundredth of a pascal and each millionth of the leak: 1 in 50 of the
   * largest.
   */
  @Test
  void theCurveAndItsSensitivitiesDoNotMissIt() {
    for (double drop = 0.1e5; drop < 0.4e5; drop += 0.02e5) {
      Hold hold = with(drop, 5e-9);
      List<Hold> moved = List.of(with(drop + 1e-2, 5e-9), with(drop, 5e-9 * (1 + 1e-6)));
      HoldSensitivities usual = new HoldSimulator().sensitivities(hold, moved, 1, TIMES);
      HoldSensitivities tight =
          new HoldSimulator(Detail.LUMPED, 2e-8).sensitivities(hold, moved, 1, TIMES);
      assertArrayEquals(tight.shown(), usual.shown(), 50, "reseat drop " + drop);
      for (int i = 0; i < TIMES.length; i++) {
        assertEquals(
            tight.sensitivities()[i][0], usual.sensitivities()[i][0], 2e-4, "by the reseat drop");
        assertEquals(tight.sensitivities()[i][1], usual.sensitivities()[i][1], 2e-4, "by the leak");
      }
    }
  }
}
