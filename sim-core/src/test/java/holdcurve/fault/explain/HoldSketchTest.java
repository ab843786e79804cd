package holdcurve.fault.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.fluid.Petrol;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HoldSketchTest {
  private static final double[] FLAT = new double[HoldSketch.COLUMNS];

  static {
    Arrays.fill(FLAT, 2e5);
  }

  @Test
  void straightLineRunsFromCornerToCorner() {
    double[] falling =
        IntStream.range(0, HoldSketch.COLUMNS)
            .mapToDouble(i -> 2e5 * (1 - i / (HoldSketch.COLUMNS - 1.0)))
            .toArray();
    List<String> lines = HoldSketch.draw(FLAT, falling).lines().toList();
    assertTrue(lines.get(1).startsWith(" 2.00 |#"), lines.get(1));
    assertTrue(lines.get(1).endsWith("."), lines.get(1));
    String last = lines.get(HoldSketch.ROWS);
    assertTrue(last.startsWith(" 0.00 |") && last.endsWith("*"), last);
    assertEquals(7 + HoldSketch.COLUMNS, last.length());
  }

  @Test
  void hasItsRowsAndColumns() {
    List<String> lines = HoldSketch.draw(FLAT, FLAT).lines().toList();
    assertEquals(1 + HoldSketch.ROWS + 3, lines.size());
    assertTrue(lines.stream().allMatch(line -> line.length() <= 7 + HoldSketch.COLUMNS));
    assertTrue(lines.get(1).endsWith("#".repeat(HoldSketch.COLUMNS)), "the same curve twice");
    assertTrue(lines.get(HoldSketch.ROWS + 2).endsWith("10 min"));
  }

  @Test
  void needsAGauge() {
    Circuit empty = new Circuit("nothing", Petrol.summer(), List.of());
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class, () -> HoldSketch.of(empty, Condition.sound(empty)));
    assertTrue(e.getMessage().contains("no gauge"));
  }
}
