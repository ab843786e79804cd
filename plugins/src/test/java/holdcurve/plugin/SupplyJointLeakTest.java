package holdcurve.plugin;

import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.NO_CLAMP;
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

/** Ahead of the check valve: no hold shows it. */
class SupplyJointLeakTest {
  private final SupplyJointLeak fault = new SupplyJointLeak();

  /** A needle shows no 0.01 bar. */
  @Test
  void noHoldShowsIt() {
    Condition wet = with(fault, mLPerMinute(1));
    assertFalse(fault.showsInHold());
    assertArrayEquals(hold(sound(), NO_CLAMP), hold(wet, NO_CLAMP), 1e-3);
  }

  /** Else a look while the pump runs, which is what tells it, would show nothing. */
  @Test
  void dripsWhileThePumpRuns() {
    double usual = received(median(fault), 0, Circuit.AIR, 60);
    assertTrue(usual > 0.1e-6, () -> usual + " m³ in a minute");
  }

  @Test
  void namesPumpAndTank() {
    List<Site> sites = fault.sites(CIRCUIT);
    assertEquals(1, sites.size());
    assertEquals("between the tank and the check valve", sites.get(0).where());
    assertEquals(List.of("pump", "check-valve", "tank"), sites.get(0).parts());
  }
}
