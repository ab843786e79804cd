package holdcurve.physics.storage;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.physics.storage.PressureWave.Anchoring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressureWaveTest {
  /** Korteweg's formula worked by hand with c₁ = 1; first row a water main. */
  @ParameterizedTest
  @CsvSource({
    "2.07e9, 1000, 0.5, 0.01, 207e9, 1174.734012",
    "0.9e9, 740, 6e-3, 0.8e-3, 207e9, 1085.26927",
    "0.9e9, 740, 6e-3, 1e-3, 0.4e9, 289.6152282"
  })
  void waveSpeed(double k, double rho, double bore, double wall, double e, double speed) {
    double give = PressureWave.thinWallDistensibility(bore, wall, e, 1);
    assertNear(speed, PressureWave.speed(k, rho, give), 1e-9, "wave speed");
  }

  /** Speed of sound from the equation of state of Span and Wagner: 1149.39 m/s at 20 °C. */
  @Test
  void rigidLineCarriesTheSpeedOfSound() {
    assertNear(1149.39, PressureWave.speed(903.39e6, 683.815, 0), 1e-5, "n-heptane");
  }

  /** ρ a Δv for 0.5 m/s stopped in the steel line above: 4.0155 bar. */
  @Test
  void joukowsky() {
    assertNear(4.015496299e5, PressureWave.surge(740, 1085.26927, 0.5), 1e-9, "surge");
  }

  /** Wylie and Streeter 1993. */
  @Test
  void anchoring() {
    assertEquals(1, Anchoring.EXPANSION_JOINTS.factor(0.3));
    assertEquals(0.85, Anchoring.UPSTREAM.factor(0.3));
    assertEquals(0.91, Anchoring.THROUGHOUT.factor(0.3));
  }
}
