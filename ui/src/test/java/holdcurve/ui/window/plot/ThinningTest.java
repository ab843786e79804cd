package holdcurve.ui.window.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ThinningTest {
  @Property(tries = 200)
  void keepsExtremesOrderAndTheLimit(
      @ForAll @Size(min = 1, max = 300) double @DoubleRange(min = 0, max = 4) [] values,
      @ForAll @IntRange(min = 2, max = 100) int most) {
    int[] kept = Thinning.keep(values, most);
    assertTrue(kept.length <= Math.max(most, 2));
    for (int i = 1; i < kept.length; i++) {
      assertTrue(kept[i - 1] < kept[i]);
    }
    double[] left = Arrays.stream(kept).mapToDouble(i -> values[i]).toArray();
    assertEquals(Arrays.stream(values).min(), Arrays.stream(left).min());
    assertEquals(Arrays.stream(values).max(), Arrays.stream(left).max());
  }

  @Test
  void fewPointsStayAsTheyAre() {
    assertArrayEquals(new int[] {0, 1, 2}, Thinning.keep(new double[] {3, 1, 2}, 3));
    assertArrayEquals(new int[0], Thinning.keep(new double[0], 3));
  }
}
