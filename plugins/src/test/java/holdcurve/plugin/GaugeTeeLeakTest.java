package holdcurve.plugin;

import static holdcurve.plugin.TestStand.BOTH;
import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.physics.circuit.Condition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** To the gauge it is any other joint on the rail: only a look tells. */
class GaugeTeeLeakTest {

  @Test
  void curveIsThatOfARailJoint() {
    Condition tee = with(new GaugeTeeLeak(), mLPerMinute(0.3), bar(0.5), 0);
    Condition joint = with(new RailJointLeak(), mLPerMinute(0.3), bar(0.5), 0);
    assertArrayEquals(hold(joint, BOTH), hold(tee, BOTH), 1e-6);
  }

  @Test
  void asksToLookAtTheTee() {
    assertEquals(
        List.of("gauge-tee", "gauge-tee-joint"), new GaugeTeeLeak().sites(CIRCUIT).get(0).parts());
  }
}
