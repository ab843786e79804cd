package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.flowsheet.BenchInjector;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.Service;
import holdcurve.common.input.InputException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets with before and after side by side, read and written. */
class BenchSheetWriterTest {
  private static final BenchLimits LIMITS = BenchLimits.shipped();
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final String SIDE_BY_SIDE =
      """
      pressure_psi: 43.5
      fluid: calibration fluid
      drop_time_min: 2
      date: 2026-11-08
      injector,serial,before_static_mL_min,after_static_mL_min,after_drops,before_spray,coil_ohm
      1,A17,171,183,0,streaky,2.4
      2,A18,166,,,solid stream,2.4
      3,,,,,,
      """;

  private static BenchSheet read(String text) {
    return BenchSheetReader.read("sheet.csv", text, LIMITS);
  }

  /** 43.5 psi by the NIST factor. */
  @Test
  void beforeAndAfterStandInOneLine() {
    BenchSheet sheet = read(SIDE_BY_SIDE);
    assertEquals(43.5 * 6894.757, sheet.benchAfter().point().pressure(), 1e-6);
    assertEquals(Optional.of(LocalDate.of(2026, 11, 8)), sheet.day());
    BenchInjector first = sheet.injectors().get(0);
    assertEquals("A17", first.mark());
    assertEquals(Optional.of(3), first.before().orElseThrow().spray());
    assertEquals(183e-6 / 60, first.after().orElseThrow().staticFlow().orElseThrow(), 1e-15);
    assertEquals(2.4, first.before().orElseThrow().coil().orElseThrow(), 1e-12);
    assertTrue(sheet.injectors().get(1).after().isEmpty());
    assertTrue(sheet.injectors().get(2).before().orElseThrow().isEmpty());
  }

  /** ISO 4113:2010, table 1: 820 to 830 kg/m³ at 15 °C, 2.45 to 2.75 mm²/s at 40 °C. */
  @Test
  void calibrationFluidIsThatOfTheStandard() {
    var fluid = read(SIDE_BY_SIDE).benchAfter().point().fluid();
    assertEquals(825, fluid.density(288.15), 1);
    assertEquals(2.6e-6, fluid.viscosity(313.15) / fluid.density(313.15), 0.15e-6);
  }

  @Test
  void anEmptyLineAfterDoesNotMakeASheetOfAfter() {
    BenchSheet sheet =
        read("pressure_bar: 3\ninjector;service;static_mL_min\n1;before;170\n2;after;\n");
    assertEquals(Service.BEFORE, sheet.latest());
    assertEquals(2, sheet.injectors().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bench/six-before-and-after.csv",
        "bench/six-as-they-came.bench.json",
        "bench/thirteen-to-match.csv"
      })
  void whatIsWrittenIsReadBack(String name) {
    BenchSheet sheet = BenchSheetReader.read(SCENARIOS.resolve(name), LIMITS);
    String text = BenchSheetWriter.csv(sheet, LIMITS);
    BenchSheet back = read(text);
    assertEquals(text, BenchSheetWriter.csv(back, LIMITS));
    assertEquals(sheet.injectors().size(), back.injectors().size());
    for (int i = 0; i < sheet.injectors().size(); i++) {
      for (Service state : Service.values()) {
        var there = sheet.injectors().get(i).readings(state);
        var here = back.injectors().get(i).readings(state);
        assertEquals(there.flatMap(r -> r.drops()), here.flatMap(r -> r.drops()));
        assertEquals(there.flatMap(r -> r.spray()), here.flatMap(r -> r.spray()));
        assertEquals(
            there.map(r -> r.staticFlow().orElse(0)).orElse(0.0),
            here.map(r -> r.staticFlow().orElse(0)).orElse(0.0),
            1e-11);
      }
    }
  }

  @Test
  void oddNamesAndMarksSurvive() {
    BenchSheet sheet =
        read("pressure_bar: 3\ninjector,serial,static_mL_min\n\"a, b\",\"=1+1\",170\n2,x#,171\n");
    BenchSheet back = read(BenchSheetWriter.csv(sheet, LIMITS));
    assertEquals(List.of("a, b", "2"), back.injectors().stream().map(BenchInjector::id).toList());
  }

  @Test
  void twoWaysOfSayingBeforeAndTwoUnitsAreRefused() {
    String twice =
        assertThrows(
                InputException.class,
                () ->
                    read("pressure_bar: 3\ninjector,service,before_static_mL_min\n1,before,170\n"))
            .getMessage();
    assertTrue(twice.contains("leave out the column service"), twice);
    String units =
        assertThrows(
                InputException.class,
                () -> read("pressure_bar: 3\npressure_psi: 43\ninjector,spray\n1,1\n"))
            .getMessage();
    assertTrue(units.contains("given in two units"), units);
  }
}
