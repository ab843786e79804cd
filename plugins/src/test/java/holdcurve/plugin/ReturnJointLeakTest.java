package holdcurve.plugin;

import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.RETURN;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.received;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Behind the shut regulator: no hold shows it by itself. */
class ReturnJointLeakTest {

  private final Condition wet = with(new ReturnJointLeak(), mLPerMinute(1));

  /** All that gets there is the weep of a sound regulator; a needle shows no 0.01 bar. */
  @Test
  void noHoldShowsIt() {
    assertFalse(new ReturnJointLeak().showsInHold());
    assertArrayEquals(hold(sound(), NO_CLAMP), hold(wet, NO_CLAMP), 1e-3);
    assertEquals(fall(sound(), RETURN), fall(wet, RETURN), 0.01);
  }

  /** Else a look while the pump runs, which is what tells it, would show nothing. */
  @Test
  void dripsWhileThePumpRuns() {
    double usual = received(median(new ReturnJointLeak()), 0, Circuit.AIR, 60);
    assertTrue(usual > 0.1e-6, () -> usual + " m³ in a minute");
  }

  /** Why it matters: with it, a clamped return no longer clears a leaking regulator. */
  @Test
  void undoesTheReturnClampIfTheRegulatorLeaksToo() {
    Condition seat = median(new RegulatorSeatLeak());
    ReturnJointLeak joint = new ReturnJointLeak();
    Condition both = joint.apply(seat, joint.sites(CIRCUIT).get(0), new double[] {mLPerMinute(1)});
    assertTrue(fall(both, RETURN) > 2 * fall(seat, RETURN));
  }

  @Test
  void hasASiteOnEachSideOfTheClamp() {
    assertEquals(
        List.of(
            "between the regulator and the middle of the return hose",
            "between the middle of the return hose and the tank"),
        new ReturnJointLeak().sites(CIRCUIT).stream().map(Site::where).toList());
  }
}
