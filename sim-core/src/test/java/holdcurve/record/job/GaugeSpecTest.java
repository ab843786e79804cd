package holdcurve.record.job;

import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import org.junit.jupiter.api.Test;

class GaugeSpecTest {
  /** Class 1.6 on 0 to 10 bar errs by 0.16 bar at most: a rectangle that wide each way. */
  @OutsideCheck(
      what = "limit of error of class 1.6, 0 to 10 bar",
      source = "EN 837-1:1996, table 11; a gauge maker's test instruction",
      value = "0.16 bar",
      tolerance = 1e-9,
      unit = "bar")
  @OutsideCheck(
      what = "standard uncertainty of class 1.6, 0 to 6 bar",
      source = "EN 837-1 and JCGM 100:2008, 4.3.7 (clause from memory), computed apart",
      value = "0.0554256 bar",
      tolerance = 5e-8,
      unit = "bar")
  @Test
  void classIsARectangle() {
    double ten = new GaugeSpec(10e5, 0.016, 2e3).classUncertainty();
    OutsideChecks.holds("limit of error of class 1.6, 0 to 10 bar", ten * Math.sqrt(3) / 1e5);
    double six = new GaugeSpec(6e5, 0.016, 2e3).classUncertainty();
    OutsideChecks.holds("standard uncertainty of class 1.6, 0 to 6 bar", six / 1e5);
  }

  @OutsideCheck(
      what = "standard uncertainty of a reading rounded to 0.1 bar",
      source = "JCGM 100:2008, F.2.2.1 (clause from memory): 0.29 of the step",
      value = "0.029 bar",
      tolerance = 5e-4,
      unit = "bar")
  @Test
  void roundingIsARectangle() {
    double rounded = new GaugeSpec(6e5, 0.016, 1e4).roundingUncertainty();
    OutsideChecks.holds("standard uncertainty of a reading rounded to 0.1 bar", rounded / 1e5);
  }
}
