package holdcurve.bench.flowsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DynamicLineTest {
  private static final Path NORRIS = Path.of("src/test/resources/reference/nist_norris.csv");

  /**
   * NIST Statistical Reference Datasets, linear regression, set Norris (36 points): certified
   * estimates and their standard deviations. Limit 1e-9 of each, as a double of 15 digits allows.
   */
  @Test
  void fitsAsNistCertifies() throws IOException {
    List<DynamicFlow> points = new ArrayList<>();
    for (String line : Files.readAllLines(NORRIS).stream().skip(1).toList()) {
      String[] cells = line.split(",");
      points.add(new DynamicFlow(Double.parseDouble(cells[1]), Double.parseDouble(cells[0])));
    }
    DynamicLine line = DynamicLine.fit(points, Double.POSITIVE_INFINITY).orElseThrow();
    assertEquals(1.00211681802045, line.slope(), 1e-9);
    assertEquals(0.429796848199937e-3, line.slopeError(), 1e-12);
    assertEquals(-0.262323073774029, line.flowOffset(), 1e-9);
    assertEquals(0.232818234301152, line.flowOffsetError(), 1e-9);
  }

  /** Q_d = m · PW + Y = m · (PW − X), SAE J1832's model of dynamic flow, from memory. */
  @Test
  void findsSlopeAndOffsets() {
    double slope = 4e-6;
    double offset = 0.7e-3;
    DynamicLine line = DynamicLine.fit(exact(slope, offset, 2, 3, 5, 10), 0.05).orElseThrow();
    assertEquals(slope, line.slope(), 1e-15);
    assertEquals(offset, line.timeOffset(), 1e-12);
    assertEquals(-slope * offset, line.flowOffset(), 1e-18);
    assertEquals(slope * (4e-3 - offset), line.at(4e-3), 1e-17);
  }

  @Test
  void leavesOutShortPulsesThatBendAway() {
    List<DynamicFlow> flows = new ArrayList<>(exact(4e-6, 0.7e-3, 2, 3, 5, 10, 15));
    flows.add(new DynamicFlow(1.2e-3, 1.4 * 4e-6 * 0.5e-3));
    DynamicLine line = DynamicLine.fit(flows, 0.05).orElseThrow();
    assertEquals(2e-3, line.linearFrom(), 1e-12);
    assertEquals(15e-3, line.linearTo(), 1e-12);
    assertEquals(0.7e-3, line.timeOffset(), 1e-12);
  }

  @Test
  void onePulseWidthIsNoLine() {
    assertTrue(DynamicLine.fit(exact(4e-6, 0.7e-3, 2.5), 0.05).isEmpty());
  }

  private static List<DynamicFlow> exact(double slope, double offset, double... milliseconds) {
    List<DynamicFlow> flows = new ArrayList<>();
    for (double ms : milliseconds) {
      flows.add(new DynamicFlow(ms * 1e-3, slope * (ms * 1e-3 - offset)));
    }
    return flows;
  }
}
