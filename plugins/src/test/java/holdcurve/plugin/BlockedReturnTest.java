package holdcurve.plugin;

import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.running;
import static holdcurve.plugin.TestStand.sound;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import org.junit.jupiter.api.Test;

/** Above the set pressure while the pump runs, and only then. */
class BlockedReturnTest {

  private final Condition blocked = median(new BlockedReturn());

  @Test
  void standsAboveTheSetPressureWhileRunning() {
    double[] late = {20};
    double usual = running(sound(), 0, late)[0];
    assertEquals(2.15, usual, 0.1, "2.0 bar, and the regulator rises with its flow");
    assertTrue(running(blocked, 0, late)[0] > usual + 0.5);
  }

  @Test
  void noHoldShowsIt() {
    assertFalse(new BlockedReturn().showsInHold());
    assertArrayEquals(hold(sound(), NO_CLAMP), hold(blocked, NO_CLAMP), 1e-3);
  }

  @Test
  void sitsInTheFirstLineAfterTheRegulator() {
    assertEquals("return-hose", new BlockedReturn().sites(CIRCUIT).get(0).id());
  }
}
