package holdcurve.plugin;

import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.mLPerMinute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.flow.FlowLaw;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A flow law in the sense of the engine. */
class LiftedSeatLawTest {

  private final FlowLaw law = LiftedSeatLaw.throughPoint(mLPerMinute(0.4), bar(2), bar(5), 0.7);

  @Test
  void goesThroughItsPoint() {
    assertEquals(mLPerMinute(0.4), law.flow(bar(2)), 1e-18);
    assertEquals(0, law.flow(0), 0);
  }

  @Test
  void isLaminarUnderAStiffSpring() {
    FlowLaw dirt = LiftedSeatLaw.throughPoint(mLPerMinute(0.4), bar(2), bar(5), 0);
    assertEquals(mLPerMinute(0.2), dirt.flow(bar(1)), 1e-18);
  }

  /** Against central differences, also beyond the pressure where the valve opens. */
  @Property
  void slopeIsTheDerivative(@ForAll @DoubleRange(min = -8, max = 8) double pressure) {
    double d = bar(pressure);
    double step = 1;
    double difference = (law.flow(d + step) - law.flow(d - step)) / (2 * step);
    assertEquals(difference, law.slope(d), 1e-4 * difference);
    assertEquals(-law.flow(d), law.flow(-d), 1e-20);
    assertTrue(law.slope(d) > 0);
  }

  @Test
  void refusesNonsense() {
    assertThrows(IllegalArgumentException.class, () -> new LiftedSeatLaw(-1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new LiftedSeatLaw(1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new LiftedSeatLaw(1, 1, 2));
  }
}
