package holdcurve.plugin;

import static holdcurve.plugin.TestStand.BOTH;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.received;
import static holdcurve.plugin.TestStand.running;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import org.junit.jupiter.api.Test;

/** Sprays less, and holds as well as a new one. */
class TiredInjectorTest {

  private final Condition tired = with(new TiredInjector(), 0.7);

  @Test
  void noHoldShowsIt() {
    assertFalse(new TiredInjector().showsInHold());
    assertArrayEquals(hold(sound(), BOTH), hold(tired, BOTH), 1e-9);
  }

  /**
   * Q = Qs √(p/p_rated) for each, held open half the time: the square-root law of the trade. Six of
   * 250 mL/min at 2.5 bar, left with 0.7 of it.
   */
  @Test
  void spraysItsShare() {
    double p = running(tired, 0.5, new double[] {60})[0];
    double expected = 0.7 * 6 * 250e-6 * 0.5 * Math.sqrt(p / 2.5);
    assertEquals(expected, received(tired, 0.5, Circuit.MANIFOLD, 60), 0.01 * expected);
  }
}
