package holdcurve.infer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LearntRowsTest {
  private static double[] row(double x, double y) {
    return new double[] {x * x * y, Math.sin(x) - y};
  }

  private static double[] read(LearntRows rows, double x, double y) {
    double[] read = {0, 0};
    rows.addTo(read, new double[] {x, y});
    return read;
  }

  @Test
  void smoothRowsAreKnownBetweenTheirPlaces() {
    LearntRows rows = new LearntRows();
    for (int x = -2; x <= 2; x++) {
      for (int y = -2; y <= 2; y++) {
        rows.add(new double[] {x, y}, row(x, y));
      }
    }
    assertEquals(row(0.4, 1.3)[0], read(rows, 0.4, 1.3)[0], 0.05);
    assertEquals(row(0.4, 1.3)[1], read(rows, 0.4, 1.3)[1], 0.05);
  }

  @Test
  void nothingIsExpectedFarFromAllPlaces() {
    LearntRows rows = new LearntRows();
    rows.add(new double[] {0, 0}, new double[] {5, 5});
    assertEquals(0, read(rows, 20, 0)[0], 1e-9);
  }
}
