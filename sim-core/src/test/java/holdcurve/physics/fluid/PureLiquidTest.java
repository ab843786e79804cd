package holdcurve.physics.fluid;

import static holdcurve.oracle.Near.assertNear;
import static holdcurve.oracle.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.Near;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
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

  @OutsideCheck(
      what = "n-heptane and ethanol: density",
      source = "equations of state: Span and Wagner 2003, Schroeder et al. 2014",
      value = "58 values, 0 to 90 °C",
      tolerance = 0.02,
      unit = "%")
  @OutsideCheck(
      what = "n-heptane and ethanol: isothermal bulk modulus",
      source = "equations of state: Span and Wagner 2003, Schroeder et al. 2014",
      value = "likewise",
      tolerance = 0.2,
      unit = "%")
  @OutsideCheck(
      what = "n-heptane and ethanol: isentropic bulk modulus",
      source = "equations of state: Span and Wagner 2003, Schroeder et al. 2014",
      value = "likewise",
      tolerance = 0.2,
      unit = "%")
  @OutsideCheck(
      what = "n-heptane and ethanol: thermal expansion",
      source = "equations of state: Span and Wagner 2003, Schroeder et al. 2014",
      value = "likewise",
      tolerance = 1.1,
      unit = "%")
  @OutsideCheck(
      what = "n-heptane and ethanol: vapour pressure",
      source = "equations of state: Span and Wagner 2003, Schroeder et al. 2014",
      value = "likewise",
      tolerance = 1,
      unit = "%")
  @ParameterizedTest
  @MethodSource("equationOfStateRows")
  void agreesWithTheEquationOfState(CSVRecord row) {
    PureLiquid liquid = row.get("fluid").equals("Ethanol") ? PureLiquid.ethanol() : HEPTANE;
    double t = 273.15 + number(row, "T_C");
    double p = 1e5 * number(row, "p_bar_abs");
    OutsideChecks.holds(
        "n-heptane and ethanol: density", number(row, "density_kg_m3"), liquid.density(t, p));
    OutsideChecks.holds(
        "n-heptane and ethanol: isothermal bulk modulus",
        1e6 * number(row, "K_T_MPa"),
        liquid.bulkModulusIsothermal(t, p));
    OutsideChecks.holds(
        "n-heptane and ethanol: isentropic bulk modulus",
        1e6 * number(row, "K_S_MPa"),
        liquid.bulkModulusIsentropic(t, p));
    OutsideChecks.holds(
        "n-heptane and ethanol: thermal expansion",
        number(row, "alpha_1_K"),
        liquid.thermalExpansion(t));
    OutsideChecks.holds(
        "n-heptane and ethanol: vapour pressure",
        1e3 * number(row, "p_sat_kPa"),
        liquid.vapourPressure(t));
  }

  static Stream<CSVRecord> correlationRows() {
    return ReferenceTable.rows("fluid_correlations.csv").stream()
        .filter(row -> !row.get("fluid").equals("isooctane"));
  }

  /**
   * Viscosity by the form of Perry's handbook, and by the independent fit of the VDI Heat Atlas.
   * The two books themselves part by 5 % for n-heptane at 90 °C.
   */
  @OutsideCheck(
      what = "n-heptane and ethanol: viscosity",
      source = "Perry's handbook, 8th ed., table 2-313",
      value = "20 values, 0 to 90 °C",
      tolerance = 0.01,
      unit = "%")
  @OutsideCheck(
      what = "n-heptane and ethanol: viscosity below 72 °C",
      source = "VDI Heat Atlas",
      value = "16 values",
      tolerance = 3,
      unit = "%")
  @OutsideCheck(
      what = "n-heptane and ethanol: viscosity above 72 °C",
      source = "VDI Heat Atlas, which parts from Perry by 5 %",
      value = "4 values",
      tolerance = 6,
      unit = "%")
  @ParameterizedTest
  @MethodSource("correlationRows")
  void viscosityAgreesWithTheHandbooks(CSVRecord row) {
    PureLiquid liquid = row.get("fluid").equals("ethanol") ? PureLiquid.ethanol() : HEPTANE;
    double t = 273.15 + number(row, "T_C");
    double perry = 1e-3 * number(row, "viscosity_mPa_s_DIPPR101");
    double vdi = 1e-3 * number(row, "viscosity_mPa_s_VDI");
    OutsideChecks.holds("n-heptane and ethanol: viscosity", perry, liquid.viscosity(t));
    String side = t < 345 ? "below" : "above";
    OutsideChecks.holds(
        "n-heptane and ethanol: viscosity " + side + " 72 °C", vdi, liquid.viscosity(t));
  }

  /** CRC handbook, Physical Constants of Organic Compounds. */
  @OutsideCheck(
      what = "density of n-heptane, 25 °C",
      source = "CRC handbook, Physical Constants of Organic Compounds",
      value = "679.5 kg/m³",
      tolerance = 0.05,
      unit = "%")
  @OutsideCheck(
      what = "density of ethanol, 20 °C",
      source = "CRC handbook, Physical Constants of Organic Compounds",
      value = "789.3 kg/m³",
      tolerance = 0.05,
      unit = "%")
  @Test
  void agreesWithTheHandbookDensities() {
    OutsideChecks.holds("density of n-heptane, 25 °C", HEPTANE.density(298.15));
    OutsideChecks.holds("density of ethanol, 20 °C", PureLiquid.ethanol().density(293.15));
  }

  /** Perry's handbook, table 2-32 (from memory), DIPPR 105; molar masses 100.204, 46.069 g/mol. */
  @OutsideCheck(
      what = "n-heptane and ethanol: density below 0 °C",
      source = "Perry's handbook, 8th ed., table 2-32 (from memory)",
      value = "6 values, -20 to 0 °C",
      tolerance = 0.3,
      unit = "%")
  @ParameterizedTest
  @ValueSource(doubles = {-20, -10, 0})
  void extrapolatesDensityBelowZero(double celsius) {
    double t = 273.15 + celsius;
    double heptane = 100.204 * 0.61259 / Math.pow(0.26211, 1 + Math.pow(1 - t / 540.2, 0.28141));
    double ethanol = 46.069 * 1.6288 / Math.pow(0.27469, 1 + Math.pow(1 - t / 514, 0.23178));
    OutsideChecks.holds("n-heptane and ethanol: density below 0 °C", heptane, HEPTANE.density(t));
    OutsideChecks.holds(
        "n-heptane and ethanol: density below 0 °C", ethanol, PureLiquid.ethanol().density(t));
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
