package holdcurve.plugin;

import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.running;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.part.Filter;
import org.junit.jupiter.api.Test;

/** Holds well; sags when much is drawn. */
class CloggedFilterTest {

  private final Condition clogged = with(new CloggedFilter(), bar(4));

  @Test
  void noHoldShowsIt() {
    assertFalse(new CloggedFilter().showsInHold());
    assertArrayEquals(hold(sound(), NO_CLAMP), hold(clogged, NO_CLAMP), 1e-9);
  }

  /** Injectors wide open ask for 1.3 L/min at 2 bar; through this filter 1 L/min costs 4 bar. */
  @Test
  void sagsWhenMuchIsDrawn() {
    double[] late = {20};
    assertEquals(2, running(sound(), 1, late)[0], 0.1);
    assertTrue(running(clogged, 1, late)[0] < 1.5);
    assertEquals(2, running(clogged, 0, late)[0], 0.1);
  }

  @Test
  void isNeverBetterThanASoundOne() {
    Condition clean = with(new CloggedFilter(), bar(0.0001));
    assertEquals(
        CIRCUIT.part("filter").value(Filter.DROP),
        clean.circuit().part("filter").value(Filter.DROP),
        0);
  }
}
