package holdcurve.plugin;

import static holdcurve.plugin.TestStand.BOTH;
import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.part.Damper;
import org.junit.jupiter.api.Test;

/** The same leak pulls the pressure down faster, since the damper stores less. */
class DamperDiaphragmLeakTest {

  @Test
  void fallsFasterThanTheSameLeakElsewhere() {
    Condition burst = with(new DamperDiaphragmLeak(), mLPerMinute(0.3), bar(1), 0.9);
    Condition pinhole = with(new DamperDiaphragmLeak(), mLPerMinute(0.3), bar(1), 0);
    Condition tip = with(new InjectorTipLeak(), mLPerMinute(0.3), bar(1));
    assertArrayEquals(hold(tip, NO_CLAMP), hold(pinhole, NO_CLAMP), 1e-6);
    assertTrue(fall(burst, BOTH) > fall(tip, BOTH) + 0.1);
  }

  @Test
  void noClampStopsIt() {
    Condition burst = median(new DamperDiaphragmLeak());
    assertTrue(fall(burst, BOTH) > fall(burst, NO_CLAMP));
  }

  @Test
  void keepsSomeStroke() {
    Condition worst = with(new DamperDiaphragmLeak(), mLPerMinute(0.3), bar(1), 0.95);
    double stroke = worst.circuit().part("damper").value(Damper.STROKE_VOLUME);
    assertEquals(0.05 * CIRCUIT.part("damper").value(Damper.STROKE_VOLUME), stroke, 1e-12);
  }
}
