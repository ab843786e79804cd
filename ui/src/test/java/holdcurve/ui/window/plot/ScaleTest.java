package holdcurve.ui.window.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ScaleTest {
  @Property
  void showsEverythingWithAFewRoundTicks(
      @ForAll @DoubleRange(min = -10, max = 100) double least,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double range) {
    Scale scale = Scale.around(least, least + range, 0.05, 0);
    assertTrue(scale.low() < least && least + range < scale.high());
    List<Double> ticks = scale.ticks();
    assertTrue(2 <= ticks.size() && ticks.size() <= 8, ticks::toString);
    assertTrue(ticks.get(0) >= scale.low() - 1e-9);
    assertTrue(ticks.get(ticks.size() - 1) <= scale.high() + 1e-9);
    double lead = scale.tick() / Math.pow(10, Math.floor(Math.log10(scale.tick()) + 1e-9));
    assertTrue(List.of(1L, 2L, 5L).contains(Math.round(lead)), () -> "tick " + scale.tick());
  }

  @Test
  void twelveMinutesHaveATickEveryTwo() {
    Scale scale = Scale.around(0, 12, 0.015, 0);
    assertEquals(List.of(0.0, 2.0, 4.0, 6.0, 8.0, 10.0, 12.0), scale.ticks());
    assertEquals(0, scale.decimals());
  }

  @Test
  void valuesThatHardlyDifferStayQuiet() {
    Scale scale = Scale.around(2.00, 2.02, 0, 0.1);
    assertEquals(0.1, scale.high() - scale.low(), 1e-12);
    assertEquals(2, scale.decimals());
  }

  @Test
  void equalValuesHaveAScaleToo() {
    assertTrue(Scale.around(2, 2, 0.05, 0.1).ticks().contains(2.0));
  }
}
