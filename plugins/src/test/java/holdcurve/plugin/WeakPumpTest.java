package holdcurve.plugin;

import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.running;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import org.junit.jupiter.api.Test;

/** Holds well; builds up slowly and may not reach the set pressure. */
class WeakPumpTest {

  @Test
  void noHoldShowsIt() {
    assertFalse(new WeakPump().showsInHold());
    Condition weak = median(new WeakPump());
    assertArrayEquals(hold(sound(), NO_CLAMP), hold(weak, NO_CLAMP), 1e-9);
  }

  @Test
  void buildsUpSlowly() {
    Condition weak = with(new WeakPump(), 0.2, 1);
    double[] soon = {0.05};
    assertTrue(running(weak, 0, soon)[0] < running(sound(), 0, soon)[0] / 2);
  }

  /** Three tenths of a stall pressure of 6 bar is 1.8 bar, below the regulator's 2 bar. */
  @Test
  void mayNotReachTheSetPressure() {
    double reached = running(with(new WeakPump(), 0.8, 0.3), 0, new double[] {20})[0];
    assertTrue(reached > 1.6 && reached < 1.8, () -> reached + " bar");
  }
}
