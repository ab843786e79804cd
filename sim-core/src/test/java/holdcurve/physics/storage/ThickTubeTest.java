package holdcurve.physics.storage;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import holdcurve.physics.storage.ThickTube.Ends;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThickTubeTest {
  /** Lamé's solution worked by hand, mm³ per metre and bar; bore and wall mm, modulus Pa. */
  @OutsideCheck(
      what = "what a thick tube takes up",
      source = "Lamé's solution, computed apart",
      value = "9 values, 0.11 to 1917 mm³ a metre and bar",
      tolerance = 1e-7,
      unit = "%")
  @ParameterizedTest
  @CsvSource({
    "6, 0.8, 207e9, 0.3, OPEN, 0.1123460851",
    "6, 0.8, 207e9, 0.3, CLOSED, 0.1213851944",
    "6, 0.8, 207e9, 0.3, HELD, 0.1177695507",
    "6, 1, 0.4e9, 0.4, OPEN, 48.87420571",
    "6, 1, 0.4e9, 0.4, CLOSED, 50.69184146",
    "6, 1, 0.4e9, 0.4, HELD, 50.32831431",
    "7.5, 3, 10e6, 0.499, OPEN, 1916.548584",
    "7.5, 3, 10e6, 0.499, CLOSED, 1916.943036",
    "7.5, 3, 10e6, 0.499, HELD, 1916.942247"
  })
  void lame(double bore, double wall, double modulus, double poisson, Ends ends, double perBar) {
    ThickTube tube = new ThickTube(bore / 2e3, bore / 2e3 + wall / 1e3, modulus, poisson, ends);
    double metre = Math.PI * bore * bore / 4e6;
    OutsideChecks.holds(
        "what a thick tube takes up", perBar, 1e9 * metre * tube.distensibility() * 1e5);
  }

  /** A very thin open tube: area grows by p D/(E e). */
  @Test
  void thinWallLimit() {
    ThickTube tube = new ThickTube(3e-3, 3.0003e-3, 207e9, 0, Ends.OPEN);
    double thin = 6e-3 / (207e9 * 0.3e-6);
    assertNear(thin, tube.distensibility(), 2e-4, "distensibility");
  }

  @Test
  void refusesATubeWithoutWall() {
    assertThrows(
        IllegalArgumentException.class, () -> new ThickTube(3e-3, 3e-3, 1e9, 0.3, Ends.OPEN));
  }
}
