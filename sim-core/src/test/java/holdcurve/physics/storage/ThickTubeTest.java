package holdcurve.physics.storage;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.physics.storage.ThickTube.Ends;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThickTubeTest {
  /** Lamé's solution worked by hand, mm³ per metre and bar; bore and wall mm, modulus Pa. */
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
    assertNear(perBar, 1e9 * tube.storage(1).volume(1e5), 1e-9, "mm³");
  }

  /** A very thin open tube: area grows by p D/(E e). */
  @Test
  void thinWallLimit() {
    ThickTube tube = new ThickTube(3e-3, 3.0003e-3, 207e9, 0, Ends.OPEN);
    double thin = PressureWave.thinWallDistensibility(6e-3, 0.3e-6, 207e9, 1);
    assertNear(thin, tube.distensibility(), 2e-4, "distensibility");
  }

  /** 1 m of liquid in a 6 mm bore at 0.9 GPa: 3.142 mm³ per bar. */
  @Test
  void liquidInTheBore() {
    double volume = Math.PI * 9e-6;
    assertNear(3.142, 1e9 * LinearStorage.liquid(volume, 0.9e9).volume(1e5), 1e-3, "mm³");
  }

  @Test
  void refusesATubeWithoutWall() {
    assertThrows(
        IllegalArgumentException.class, () -> new ThickTube(3e-3, 3e-3, 1e9, 0.3, Ends.OPEN));
  }
}
