package holdcurve.plugin;

import static holdcurve.plugin.TestStand.BOTH;
import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A gauge sees no difference between it and an injector of the same leak. */
class ColdStartInjectorLeakTest {

  @Test
  void curveIsThatOfAnInjector() {
    Condition extra = with(new ColdStartInjectorLeak(), mLPerMinute(0.3), bar(0.3));
    Condition usual = with(new InjectorTipLeak(), mLPerMinute(0.3), bar(0.3));
    assertArrayEquals(hold(usual, BOTH), hold(extra, BOTH), 1e-6);
  }

  @Test
  void asksToLookElsewhere() {
    Site site = new ColdStartInjectorLeak().sites(CIRCUIT).get(0);
    assertEquals(List.of("cold-start-injector"), site.parts());
  }

  @Test
  void isNowhereWithoutThePart() {
    Circuit four = new Circuit("plain", CIRCUIT.fluid(), CIRCUIT.parts().subList(0, 7));
    assertEquals(List.of(), new ColdStartInjectorLeak().sites(four));
  }
}
