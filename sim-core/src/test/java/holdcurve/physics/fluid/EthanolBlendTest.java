package holdcurve.physics.fluid;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Near;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class EthanolBlendTest {
  private static final Petrol BASE = Petrol.summer();
  private static final EthanolBlend E10 = new EthanolBlend(BASE, 0.10);

  /** Ethanol 793.7 kg/m³ at 15 °C, between 797.94 and 789.42 at 10 and 20 °C (Schroeder 2014). */
  @Test
  void densityAtFifteenDegreesIsTheWeightedMean() {
    assertNear(0.9 * 745 + 0.1 * 793.7, E10.density(288.15), 1e-4, "density");
  }

  @Property
  void liesBetweenItsComponents(@ForAll @DoubleRange(min = 273.15, max = 363.15) double t) {
    PureLiquid ethanol = PureLiquid.ethanol();
    assertBetween(BASE.density(t), ethanol.density(t), E10.density(t));
    assertBetween(BASE.viscosity(t), ethanol.viscosity(t), E10.viscosity(t));
    assertBetween(BASE.thermalExpansion(t), ethanol.thermalExpansion(t), E10.thermalExpansion(t));
    assertBetween(
        BASE.bulkModulusIsothermal(t, 3e5),
        ethanol.bulkModulusIsothermal(t, 3e5),
        E10.bulkModulusIsothermal(t, 3e5));
    assertBetween(
        BASE.bulkModulusIsentropic(t, 3e5),
        ethanol.bulkModulusIsentropic(t, 3e5),
        E10.bulkModulusIsentropic(t, 3e5));
  }

  private static void assertBetween(double a, double b, double value) {
    assertTrue(value >= Math.min(a, b) && value <= Math.max(a, b), a + " " + value + " " + b);
  }

  @Property
  void moduliAndExpansionFollowFromDensity(@ForAll @DoubleRange(min = 275, max = 361) double t) {
    double byPressure = Near.derivative(p -> E10.density(t, p), 3e5, 1e4);
    assertNear(
        E10.density(t, 3e5) / byPressure, E10.bulkModulusIsothermal(t, 3e5), 1e-4, "modulus");
    double byTemperature = Near.derivative(E10::density, t, 0.5);
    assertNear(-byTemperature / E10.density(t), E10.thermalExpansion(t), 2e-3, "expansion");
  }

  /** Splash blending lifts the Reid vapour pressure by 6 to 8 kPa (from memory). */
  @OutsideCheck(
      what = "vapour pressure that a tenth of ethanol adds",
      source = "splash blending, from memory",
      value = "7 kPa",
      tolerance = 1,
      unit = "kPa")
  @Test
  void vapourPressureIsThatOfAMoreVolatilePetrol() {
    double lifted = Petrol.of(67e3, 745).vapourPressure(310.95);
    assertNear(lifted, E10.vapourPressure(310.95), 1e-12, "vapour pressure");
    double lift = E10.vapourPressure(310.95) - BASE.vapourPressure(310.95);
    OutsideChecks.holds("vapour pressure that a tenth of ethanol adds", lift / 1e3);
  }

  @Test
  void refusesFractionsTheVapourRuleDoesNotCover() {
    assertThrows(IllegalArgumentException.class, () -> new EthanolBlend(BASE, 0.85));
    assertThrows(IllegalArgumentException.class, () -> new EthanolBlend(BASE, 0.01));
  }
}
