package holdcurve.plugin;

import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.FEED;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.RETURN;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.law;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.flow.FlowLaw;
import org.junit.jupiter.api.Test;

/** Where a check valve leaks, but quick at first: the pressure lifts it. */
class PumpReliefLeakTest {

  private final Condition leaking = with(new PumpReliefLeak(), mLPerMinute(0.4), 1);

  @Test
  void onlyTheFeedClampStopsIt() {
    assertEquals(fall(sound(), FEED), fall(leaking, FEED), 0.05);
    assertTrue(fall(leaking, RETURN) > 3 * fall(sound(), RETURN));
  }

  /** By hand: (2/1) (1 − 1/5)/(1 − 2/5) = 2.667 with a spring for 5 bar. */
  @Test
  void growsFasterThanThePressure() {
    FlowLaw law = law(leaking);
    assertEquals(2.667, law.flow(bar(2)) / law.flow(bar(1)), 1e-3);
  }

  @Test
  void slackensMoreThanACheckValve() {
    double[] relief = hold(leaking, NO_CLAMP);
    double[] valve = hold(with(new CheckValveSeatLeak(), mLPerMinute(0.4), 0.8), NO_CLAMP);
    assertTrue(relief[60] > valve[60] + 0.2, "both pass 0.4 mL/min at 2 bar");
  }

  @Test
  void saysThatItMayNotBeThere() {
    assertTrue(new PumpReliefLeak().sites(CIRCUIT).get(0).where().contains("if there is one"));
  }
}
