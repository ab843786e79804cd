package holdcurve.plugin;

import static holdcurve.plugin.TestStand.FEED;
import static holdcurve.plugin.TestStand.RETURN;
import static holdcurve.plugin.TestStand.exponent;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.law;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.flow.FlowLaw;
import org.junit.jupiter.api.Test;

/** Stops with the feed clamped, and hardly slackens as the pressure falls. */
class CheckValveSeatLeakTest {

  private final Condition leaking = median(new CheckValveSeatLeak());

  @Test
  void onlyTheFeedClampStopsIt() {
    assertEquals(fall(sound(), FEED), fall(leaking, FEED), 0.05);
    assertTrue(fall(leaking, RETURN) > 4 * fall(sound(), RETURN));
  }

  /** Pressed shut by what it holds, a soft seat passes at 1 bar nearly what it passes at 2. */
  @Test
  void softSeatHardlySlackens() {
    FlowLaw soft = law(with(new CheckValveSeatLeak(), mLPerMinute(0.5), 0.8));
    assertTrue(exponent(soft) < 0.35, () -> "exponent " + exponent(soft));
    FlowLaw scored = law(with(new CheckValveSeatLeak(), mLPerMinute(0.5), 0));
    assertEquals(1, exponent(scored), 1e-9);
  }
}
