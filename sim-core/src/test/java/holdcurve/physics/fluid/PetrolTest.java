package holdcurve.physics.fluid;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Near;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PetrolTest {
  private static final double PSI = 6894.757;
  private static final Petrol SUMMER = Petrol.summer();

  /**
   * US EPA, AP-42, chapter 7.1, refined stocks, S = 3 (from memory): psia at 40 to 100 °F, with
   * zero at −459.6.
   */
  @OutsideCheck(
      what = "vapour pressure of petrol",
      source = "US EPA, AP-42, chapter 7.1, refined stocks (from memory)",
      value = "21 values, 2.28 to 13.89 psi",
      tolerance = 0.006,
      unit = "psi")
  @ParameterizedTest
  @CsvSource({
    "7, 2.28, 2.83, 3.48, 4.25, 5.15, 6.20, 7.42",
    "10, 3.46, 4.25, 5.18, 6.26, 7.52, 8.98, 10.64",
    "13, 4.70, 5.73, 6.94, 8.33, 9.94, 11.79, 13.89"
  })
  void vapourPressureFollowsTheRefinedStocksTable(
      double reid,
      double f40,
      double f50,
      double f60,
      double f70,
      double f80,
      double f90,
      double f100) {
    double[] table = {f40, f50, f60, f70, f80, f90, f100};
    Petrol petrol = Petrol.of(reid * PSI, 745);
    for (int i = 0; i < table.length; i++) {
      double kelvin = (40 + 10 * i + 459.6) / 1.8;
      OutsideChecks.holds(
          "vapour pressure of petrol", table[i], petrol.vapourPressure(kelvin) / PSI);
    }
  }

  /** The same formula carried above its chart: RVP 9 psi gives 124 kPa at 60 °C, 259 kPa at 90. */
  @Test
  void hotPetrolNearsTheRailPressure() {
    Petrol petrol = Petrol.of(9 * PSI, 745);
    assertEquals(124e3, petrol.vapourPressure(333.15), 1e3);
    assertEquals(259e3, petrol.vapourPressure(363.15), 1e3);
  }

  /** Isentropic 0.85 GPa (below the pure components) to 1.3 GPa (Munson et al., table 1.6). */
  @Property
  void modulusStaysInThePublishedRangeAtTwentyDegrees(
      @ForAll @DoubleRange(min = 720, max = 775) double density) {
    Petrol petrol = Petrol.of(60e3, density);
    double isentropic = petrol.bulkModulusIsentropic(293.15, 101_325);
    assertTrue(isentropic > 0.85e9 && isentropic < 1.3e9, "K_S " + isentropic);
    assertNear(isentropic / 1.25, petrol.bulkModulusIsothermal(293.15, 101_325), 1e-12, "K_T");
  }

  /** n-heptane and n-octane lose 29 and 28 % of K_T from 20 to 60 °C (equations of state). */
  @OutsideCheck(
      what = "bulk modulus of petrol, 60 over 20 °C",
      source = "equations of state of n-heptane and n-octane",
      value = "0.706 and 0.717",
      tolerance = 0.04,
      unit = "")
  @Test
  void modulusFallsWithTemperatureAsThatOfAlkanes() {
    double ratio =
        SUMMER.bulkModulusIsothermal(333.15, 101_325)
            / SUMMER.bulkModulusIsothermal(293.15, 101_325);
    OutsideChecks.holds("bulk modulus of petrol, 60 over 20 °C", 504.41 / 714.69, ratio);
    OutsideChecks.holds("bulk modulus of petrol, 60 over 20 °C", 574.30 / 801.17, ratio);
  }

  /** Between the textbook gasoline of 680 kg/m³ (Munson et al.) and iso-octane (Perry), 20 °C. */
  @Test
  void viscosityLiesBetweenTheTextbookPetrolAndIsoOctane() {
    assertTrue(SUMMER.viscosity(293.15) > 0.31e-3 && SUMMER.viscosity(293.15) < 0.50644e-3);
    assertNear(
        1.2 * SUMMER.viscosity(300), new Petrol(60e3, 745, 1, 1.2).viscosity(300), 1e-12, "factor");
  }

  /** ASTM D1250-80, table 54B, for 745 kg/m³ by hand: α₁₅ = 673.3288/555025, 30 K warmer. */
  @OutsideCheck(
      what = "thermal expansion of petrol of 745 kg/m³, 15 °C",
      source = "ASTM D1250-80, table 54B",
      value = "1.2131504e-3 1/K",
      tolerance = 1e-4,
      unit = "%")
  @Test
  void densityFollowsTheVolumeCorrection() {
    assertNear(745, SUMMER.density(288.15), 1e-9, "15 °C");
    OutsideChecks.holds(
        "thermal expansion of petrol of 745 kg/m³, 15 °C", SUMMER.thermalExpansion(288.15));
    double factor = Math.exp(-0.036394512 * (1 + 0.029115610));
    assertNear(745 * factor, SUMMER.density(318.15), 1e-7, "45 °C");
  }

  /**
   * n-Heptane and n-octane in a rigid wall rise by α K_T, 8.80 and 9.18 bar a kelvin at 20 °C.
   * Published moduli of petrol, 0.85 to 1.3 GPa (Munson et al., table 1.6), part by 21 % from their
   * middle.
   */
  @OutsideCheck(
      what = "trapped petrol that warms, rigid wall",
      source = "equations of state of n-heptane and n-octane, 20 °C",
      value = "8.99 bar/K",
      tolerance = 21,
      unit = "%",
      misses = "petrol is given a modulus between that of alkanes and a textbook's 1.3 GPa")
  @Test
  void trappedPetrolRisesLikeTrappedAlkanes() {
    double rise = SUMMER.thermalExpansion(293.15) * SUMMER.bulkModulusIsothermal(293.15, 3e5);
    OutsideChecks.holds("trapped petrol that warms, rigid wall", rise / 1e5);
  }

  /** Light and heavy hydrocarbons bracket petrol: n-heptane 1.23e-3, toluene 1.08e-3 (memory). */
  @Property
  void expansionIsThatOfAHydrocarbon(@ForAll @DoubleRange(min = 720, max = 775) double density) {
    double expansion = Petrol.of(60e3, density).thermalExpansion(293.15);
    assertTrue(expansion > 1.08e-3 && expansion < 1.31e-3, "expansion " + expansion);
  }

  @Property
  void expansionIsTheSlopeOfDensity(@ForAll @DoubleRange(min = 255, max = 361) double t) {
    double slope = Near.derivative(SUMMER::density, t, 0.5);
    assertNear(-slope / SUMMER.density(t), SUMMER.thermalExpansion(t), 1e-6, "expansion");
  }

  @Test
  void refusesGradesThatAreNotPetrol() {
    var density = assertThrows(IllegalArgumentException.class, () -> Petrol.of(60e3, 830));
    assertEquals(
        "density at 15 °C is 830.0 [kg/m³] but must be 720.0 to 775.0", density.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Petrol.of(60, 745));
  }
}
