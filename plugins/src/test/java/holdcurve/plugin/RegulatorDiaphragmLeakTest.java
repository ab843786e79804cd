package holdcurve.plugin;

import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.RETURN;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import org.junit.jupiter.api.Test;

/** Passes the seat by: the clamp on the return does not stop it, as it stops a seat. */
class RegulatorDiaphragmLeakTest {

  @Test
  void theReturnClampDoesNotStopIt() {
    Condition diaphragm = with(new RegulatorDiaphragmLeak(), mLPerMinute(0.5), bar(1));
    Condition seat = with(new RegulatorSeatLeak(), mLPerMinute(0.5), bar(1));
    assertArrayEquals(hold(seat, NO_CLAMP), hold(diaphragm, NO_CLAMP), 1e-3);
    assertTrue(fall(diaphragm, RETURN) > 3 * fall(seat, RETURN));
  }

  @Test
  void endsInTheManifold() {
    assertEquals(Circuit.MANIFOLD, median(new RegulatorDiaphragmLeak()).leaks().get(0).to());
  }
}
