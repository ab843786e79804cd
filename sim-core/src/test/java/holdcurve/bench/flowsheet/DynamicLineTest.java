package holdcurve.bench.flowsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
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
  @OutsideCheck(
      what = "straight line: slope",
      source = "NIST Statistical Reference Datasets, set Norris",
      value = "1.00211681802045",
      tolerance = 1e-9,
      unit = "")
  @OutsideCheck(
      what = "straight line: standard error of the slope",
      source = "NIST Statistical Reference Datasets, set Norris",
      value = "0.429796848199937e-3",
      tolerance = 1e-12,
      unit = "")
  @OutsideCheck(
      what = "straight line: intercept",
      source = "NIST Statistical Reference Datasets, set Norris",
      value = "-0.262323073774029",
      tolerance = 1e-9,
      unit = "")
  @OutsideCheck(
      what = "straight line: standard error of the intercept",
      source = "NIST Statistical Reference Datasets, set Norris",
      value = "0.232818234301152",
      tolerance = 1e-9,
      unit = "")
  @Test
  void fitsAsNistCertifies() throws IOException {
    List<DynamicFlow> points = new ArrayList<>();
    for (String line : Files.readAllLines(NORRIS).stream().skip(1).toList()) {
      String[] cells = line.split(",");
      points.add(new DynamicFlow(Double.parseDouble(cells[1]), Double.parseDouble(cells[0])));
    }
    DynamicLine line = DynamicLine.fit(points, Double.POSITIVE_INFINITY).orElseThrow();
    OutsideChecks.holds("straight line: slope", line.slope());
    OutsideChecks.holds("straight line: standard error of the slope", line.slopeError());
    OutsideChecks.holds("straight line: intercept", line.flowOffset());
    OutsideChecks.holds("straight line: standard error of the intercept", line.flowOffsetError());
  }

  /**
   * JCGM 100:2008, H.3: corrections of a thermometer over its reading less 20 °C. Data as in public
   * programs that work the example. Half a degree is added to the corrections, since no pulse gives
   * less than nothing; it is taken off the intercept.
   */
  @OutsideCheck(
      what = "thermometer: correction at 20 °C",
      source = "JCGM 100:2008 (GUM), H.3; results from memory",
      value = "-0.1712 °C",
      tolerance = 5e-5,
      unit = "°C")
  @OutsideCheck(
      what = "thermometer: uncertainty of the correction",
      source = "JCGM 100:2008 (GUM), H.3; results from memory",
      value = "0.0029 °C",
      tolerance = 5e-5,
      unit = "°C")
  @OutsideCheck(
      what = "thermometer: slope of the correction",
      source = "JCGM 100:2008 (GUM), H.3; results from memory",
      value = "0.00218 °C/°C",
      tolerance = 5e-6,
      unit = "°C/°C")
  @OutsideCheck(
      what = "thermometer: uncertainty of the slope",
      source = "JCGM 100:2008 (GUM), H.3; results from memory",
      value = "0.00067 °C/°C",
      tolerance = 5e-6,
      unit = "°C/°C")
  @Test
  void worksTheThermometerOfTheGum() {
    double[] readings = {
      21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    double[] corrections = {
      -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };
    List<DynamicFlow> points = new ArrayList<>();
    for (int i = 0; i < readings.length; i++) {
      points.add(new DynamicFlow(readings[i] - 20, corrections[i] + 0.5));
    }
    DynamicLine line = DynamicLine.fit(points, Double.POSITIVE_INFINITY).orElseThrow();
    OutsideChecks.holds("thermometer: correction at 20 °C", line.flowOffset() - 0.5);
    OutsideChecks.holds("thermometer: uncertainty of the correction", line.flowOffsetError());
    OutsideChecks.holds("thermometer: slope of the correction", line.slope());
    OutsideChecks.holds("thermometer: uncertainty of the slope", line.slopeError());
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
