package holdcurve.plugin;

import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.FEED;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.RETURN;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Condition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stops with the feed clamped, and dries up below its opening pressure. */
class FeedJointLeakTest {

  private final Condition wet = with(new FeedJointLeak(), mLPerMinute(1), bar(1), 0);

  @Test
  void onlyTheFeedClampStopsIt() {
    assertEquals(fall(sound(), FEED), fall(wet, FEED), 0.05);
    assertTrue(fall(wet, RETURN) > 2 * fall(sound(), RETURN));
  }

  @Test
  void driesUpWhereACheckValveGoesOn() {
    double[] joint = hold(wet, NO_CLAMP);
    double[] valve = hold(with(new CheckValveSeatLeak(), mLPerMinute(1), 0.4), NO_CLAMP);
    assertTrue(joint[60] > 0.6, () -> "only the sound weep goes on below 1 bar: " + joint[60]);
    assertTrue(valve[60] < 0.3);
  }

  @Test
  void coversTheLineUpToTheClamp() {
    Site site = new FeedJointLeak().sites(CIRCUIT).get(0);
    assertEquals("between the check valve and the middle of the feed hose", site.where());
    assertEquals(List.of("pump", "check-valve", "feed-pipe", "filter", "feed-hose"), site.parts());
  }
}
