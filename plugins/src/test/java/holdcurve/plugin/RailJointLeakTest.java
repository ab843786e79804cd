package holdcurve.plugin;

import static holdcurve.plugin.TestStand.BOTH;
import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.part.Hose;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No clamp stops it; it dries up below its opening pressure. */
class RailJointLeakTest {

  private final Condition wet = with(new RailJointLeak(), mLPerMinute(1), bar(1), 0);

  @Test
  void noClampStopsIt() {
    assertTrue(fall(wet, BOTH) > fall(wet, NO_CLAMP));
  }

  @Test
  void driesUpWhereAnInjectorGoesOn() {
    double[] joint = hold(wet, BOTH);
    double[] tip = hold(with(new InjectorTipLeak(), mLPerMinute(1), bar(0.3)), BOTH);
    assertTrue(joint[60] > 0.6, () -> "only the sound weep goes on below 1 bar: " + joint[60]);
    assertTrue(tip[60] < 0.1);
  }

  @Test
  void hasASiteOnEachSideOfEachClamp() {
    Circuit more = CIRCUIT.with("ring-hoses", Hose.CLAMPABLE, 1);
    List<String> where = new RailJointLeak().sites(more).stream().map(Site::where).toList();
    assertEquals(
        List.of(
            "between the middle of the feed hose and the middle of the ring hoses",
            "between the middle of the ring hoses and the regulator"),
        where);
  }

  @Test
  void isPartOfTheFeedWithoutAClampBetween() {
    Circuit rigid = CIRCUIT.with("feed-hose", Hose.CLAMPABLE, 0);
    assertEquals(List.of(), new RailJointLeak().sites(rigid));
    assertEquals(
        "between the check valve and the regulator",
        new FeedJointLeak().sites(rigid).get(0).where());
  }
}
