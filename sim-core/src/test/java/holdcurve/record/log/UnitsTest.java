package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Conversions against NIST Special Publication 811 (2008), appendix B.8. */
class UnitsTest {
  /** Factors as printed there: bar 1.0 E+05, psi 6.894 757 E+03, kgf/cm² 9.806 65 E+04. */
  @ParameterizedTest
  @CsvSource({
    "bar, 1.0e5",
    "mbar, 1.0e2",
    "hPa, 1.0e2",
    "kPa, 1.0e3",
    "MPa, 1.0e6",
    "Pa, 1",
    "psi, 6.894757e3",
    "PSIG, 6.894757e3",
    "kg/cm², 9.80665e4",
    "kp/cm2, 9.80665e4"
  })
  void pressureFactorsAreThePublishedOnes(String written, double pascals) {
    assertEquals(pascals, PressureUnit.of(written).orElseThrow().toPascal(1));
  }

  /** 1 atm = 101 325 Pa exactly and 14.695 95 psi to the digits that both factors carry. */
  @OutsideCheck(
      what = "one atmosphere",
      source = "NIST Special Publication 811 (2008), B.8",
      value = "14.69595 psi",
      tolerance = 5e-6,
      unit = "psi")
  @Test
  void oneAtmosphereInPsi() {
    OutsideChecks.holds("one atmosphere", PressureUnit.PSI.fromPascal(101_325));
  }

  /** The triple point of water is 273.16 K, 0.01 °C, 32.018 °F by definition of the scales. */
  @ParameterizedTest
  @CsvSource({"°C, 0.01", "F, 32.018", "K, 273.16"})
  void temperatureScalesMeetAtTheTriplePoint(String written, double value) {
    assertEquals(273.16, TemperatureUnit.of(written).orElseThrow().toKelvin(value), 1e-9);
  }

  @ParameterizedTest
  @EnumSource(PressureUnit.class)
  void everyPressureUnitReadsItsOwnSymbol(PressureUnit unit) {
    assertEquals(Optional.of(unit), PressureUnit.of(unit.symbol()));
    assertEquals(2.5e5, unit.toPascal(unit.fromPascal(2.5e5)), 1e-9);
  }

  @ParameterizedTest
  @EnumSource(TemperatureUnit.class)
  void everyTemperatureUnitReadsItsOwnSymbol(TemperatureUnit unit) {
    assertEquals(Optional.of(unit), TemperatureUnit.of(unit.symbol()));
  }

  @Test
  void unknownUnitsAreUnknown() {
    assertTrue(PressureUnit.of("inHg").isEmpty());
    assertTrue(TemperatureUnit.of("R").isEmpty());
  }
}
