package holdcurve.physics.fluid;

import static holdcurve.oracle.Near.assertNear;
import static holdcurve.oracle.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.Near;
import holdcurve.oracle.ReferenceTable;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PureLiquidTest {
  private static final PureLiquid HEPTANE = PureLiquid.nHeptane();

  /** Reference equations of state: Span and Wagner 2003, Schroeder et al. 2014. */
  static Stream<CSVRecord> equationOfStateRows() {
    return ReferenceTable.rows("fluid_properties.csv").stream()
        .filter(row -> !row.get("fluid").equals("n-Octane"));
  }

  @ParameterizedTest
  @MethodSource("equationOfStateRows")
  void agreesWithTheEquationOfState(CSVRecord row) {
    PureLiquid liquid = row.get("fluid").equals("Ethanol") ? PureLiquid.ethanol() : HEPTANE;
    double t = 273.15 + number(row, "T_C");
    double p = 1e5 * number(row, "p_bar_abs");
    assertNear(number(row, "density_kg_m3"), liquid.density(t, p), 2e-4, "density");
    assertNear(
        1e6 * number(row, "K_T_MPa"), liquid.bulkModulusIsothermal(t, p), 2e-3, "isothermal");
    assertNear(
        1e6 * number(row, "K_S_MPa"), liquid.bulkModulusIsentropic(t, p), 2e-3, "isentropic");
    assertNear(number(row, "alpha_1_K"), liquid.thermalExpansion(t), 1.1e-2, "expansion");
    assertNear(1e3 * number(row, "p_sat_kPa"), liquid.vapourPressure(t), 1e-2, "vapour pressure");
  }

  static Stream<CSVRecord> correlationRows() {
    return ReferenceTable.rows("fluid_correlations.csv").stream()
        .filter(row -> !row.get("fluid").equals("isooctane"));
  }

  /**
   * Viscosity by the form of Perry's handbook, and by the independent fit of the VDI Heat Atlas.
   * The two books themselves part by 5 % for n-heptane at 90 °C.
   */
  @ParameterizedTest
  @MethodSource("correlationRows")
  void viscosityAgreesWithTheHandbooks(CSVRecord row) {
    PureLiquid liquid = row.get("fluid").equals("ethanol") ? PureLiquid.ethanol() : HEPTANE;
    double t = 273.15 + number(row, "T_C");
    double perry = 1e-3 * number(row, "viscosity_mPa_s_DIPPR101");
    double vdi = 1e-3 * number(row, "viscosity_mPa_s_VDI");
    assertNear(perry, liquid.viscosity(t), 1e-4, "Perry");
    assertNear(vdi, liquid.viscosity(t), t < 345 ? 0.03 : 0.06, "VDI");
  }

  /** CRC handbook, Physical Constants of Organic Compounds. */
  @Test
  void agreesWithTheHandbookDensities() {
    assertNear(679.5, HEPTANE.density(298.15), 5e-4, "n-heptane, 25 °C");
    assertNear(789.3, PureLiquid.ethanol().density(293.15), 5e-4, "ethanol, 20 °C");
  }

  /** Perry's handbook, table 2-32 (from memory), DIPPR 105; molar masses 100.204, 46.069 g/mol. */
  @ParameterizedTest
  @ValueSource(doubles = {-20, -10, 0})
  void extrapolatesDensityBelowZero(double celsius) {
    double t = 273.15 + celsius;
    double heptane = 100.204 * 0.61259 / Math.pow(0.26211, 1 + Math.pow(1 - t / 540.2, 0.28141));
    double ethanol = 46.069 * 1.6288 / Math.pow(0.27469, 1 + Math.pow(1 - t / 514, 0.23178));
    assertNear(heptane, HEPTANE.density(t), 3e-3, "n-heptane");
    assertNear(ethanol, PureLiquid.ethanol().density(t), 3e-3, "ethanol");
  }

  /** Trapped liquid in a rigid wall: α K_T from the equation of state, about 8.8 bar/K. */
  @Test
  void trappedLiquidGainsNineBarPerKelvin() {
    double rise = HEPTANE.thermalExpansion(293.15) * HEPTANE.bulkModulusIsothermal(293.15, 3e5);
    assertEquals(8.8e5, rise, 0.05e5);
  }

  @Property
  void modulusIsTheSlopeOfDensity(
      @ForAll @DoubleRange(min = 254, max = 363) double t,
      @ForAll @DoubleRange(min = 1e5, max = 2e6) double p) {
    double slope = Near.derivative(x -> HEPTANE.density(t, x), p, 1e4);
    assertNear(HEPTANE.density(t, p) / slope, HEPTANE.bulkModulusIsothermal(t, p), 1e-6, "K_T");
  }

  @Property
  void expansionIsTheSlopeOfDensity(@ForAll @DoubleRange(min = 255, max = 361) double t) {
    double slope = Near.derivative(x -> HEPTANE.density(x, 3e5), t, 0.5);
    assertNear(-slope / HEPTANE.density(t, 3e5), HEPTANE.thermalExpansion(t), 1e-7, "expansion");
  }
}
