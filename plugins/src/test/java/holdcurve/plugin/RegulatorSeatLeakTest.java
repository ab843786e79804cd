package holdcurve.plugin;

import static holdcurve.plugin.TestStand.FEED;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.RETURN;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.sound;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import org.junit.jupiter.api.Test;

/** The clamp on the return stops it. */
class RegulatorSeatLeakTest {

  private final Condition leaking = median(new RegulatorSeatLeak());

  @Test
  void onlyTheReturnClampStopsIt() {
    assertTrue(fall(leaking, FEED) > 4 * fall(sound(), FEED));
    assertTrue(fall(leaking, RETURN) < fall(leaking, NO_CLAMP) / 3);
  }

  /** Until the short piece before the clamp has filled, the gauge still sinks a little. */
  @Test
  void fillsThePieceBeforeTheClampFirst() {
    assertTrue(fall(leaking, RETURN) > fall(sound(), RETURN) + 0.02);
    double[] readings = hold(leaking, RETURN);
    double early = readings[1] - readings[20];
    double late = readings[40] - readings[59];
    assertTrue(late < early / 2, "and then it holds");
  }
}
