package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReadings;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.Service;
import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchSheetReaderTest {
  private static final BenchLimits LIMITS = BenchLimits.shipped();
  private static final String TABLE =
      """
      # format: holdcurve-bench-sheet/1
      # pressure_bar: 3.0
      # drop_time_min: 2
      # serviced: 2026-11-10
      injector,service,static_mL_min,dynamic_2.5ms_mL_1000,drops,spray,coil_ohm
      1,before,171,4.7,6,streaky,2.4
      1,after,183,5.0,0,1,2.4
      2,after,180,5.1,0,1,2.4
      """;

  @TempDir private Path folder;

  private static BenchSheet read(String text) {
    return BenchSheetReader.read("sheet.csv", text, LIMITS);
  }

  private static String refusal(String text) {
    return assertThrows(InputException.class, () -> read(text)).getMessage();
  }

  @Test
  void readsATable() {
    BenchSheet sheet = read(TABLE);
    assertEquals(3e5, sheet.benchAfter().point().pressure(), 1e-6);
    assertEquals(Optional.of(LocalDate.of(2026, 11, 10)), sheet.serviced());
    assertEquals(Service.AFTER, sheet.latest());
    BenchReadings before = sheet.injectors().get(0).before().orElseThrow();
    assertEquals(171e-6 / 60, before.staticFlow().orElseThrow(), 1e-15);
    assertEquals(4.7e-9, before.dynamicFlow(2.5e-3).orElseThrow(), 1e-18);
    assertEquals(3, before.drops().orElseThrow().perMinute(), 1e-12);
    assertEquals(Optional.of(3), before.spray());
    assertTrue(sheet.injectors().get(1).before().isEmpty());
  }

  @Test
  void readsWhatASpreadsheetWrites() {
    BenchSheet sheet =
        read(
            "Invented sheet;;;\n".replace("Invented sheet", "title;Invented sheet")
                + "pressure_bar;2,5;;\n\n"
                + "Injector;Static flow (mL/min);Coil (Ω);Dynamic flow 2,5 ms (mL/1000)\n"
                + "A1;238,5;2,4;5,1\nA2;–;2,5;5,2\n");
    assertEquals("Invented sheet", sheet.title());
    BenchReadings first = sheet.injectors().get(0).before().orElseThrow();
    assertEquals(238.5e-6 / 60, first.staticFlow().orElseThrow(), 1e-15);
    assertEquals(5.1e-9, first.dynamicFlow(2.5e-3).orElseThrow(), 1e-18);
    assertTrue(sheet.injectors().get(1).before().orElseThrow().staticFlow().isEmpty());
    assertTrue(sheet.understood().get(0).contains("decimal comma"), sheet.understood().toString());
  }

  @Test
  void gramsAndLitresBecomeVolumes() {
    BenchSheet grams = read("pressure_bar: 3\ninjector,static_g_min\n1,136.8\n2,130\n");
    double density = grams.benchBefore().point().density();
    assertEquals(
        0.1368 / 60 / density,
        grams.injectors().get(0).before().orElseThrow().staticFlow().orElseThrow(),
        1e-12);
    BenchSheet litres = read("pressure_bar: 3\ninjector,static_L_h\n1,12\n");
    assertEquals(
        200e-6 / 60,
        litres.injectors().get(0).before().orElseThrow().staticFlow().orElseThrow(),
        1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "# pressure_bar: 3.0 | # presure_bar: 3.0 | line 2, presure_bar: unknown entry",
        "# pressure_bar: 3.0 | # notes: none | sheet.csv: 'pressure_bar' is missing; say at what",
        "1,before,171 | 1,before,17x | line 6, static_ml_min: found \"17x\" where a number belongs",
        "1,before,171 | 1,before,9 | line 6, static_ml_min: 9 mL/min is out of range",
        "streaky | stringy | line 6, spray: \"stringy\" is no grade of spray; give 1 (best) to 4",
        "1,after | 1,before | line 7: injector 1 stands there a second time before service",
        "2,after | 2,lately | line 8, service: 'lately' is no state of service",
        "bench-sheet/1 | bench-sheet/2 | line 1, format: this file is of the newer format",
        "4.7,6 | 4,7,6 | line 6: '2.4' stands under no heading; give every column",
        "2026-11-10 | 10.11.2026 | line 4, serviced: \"10.11.2026\" is no date; write the day",
        "# drop_time_min: 2 | # notes: none | line 6, drops: nothing says in what time",
        "coil_ohm | coil_kohm | line 6, coil_kohm: unknown entry 'coil_kohm'",
      })
  void saysWhatIsWrongAndWhere(String old, String changed, String says) {
    assertTrue(TABLE.contains(old));
    String message = refusal(TABLE.replace(old, changed));
    assertTrue(message.startsWith("sheet.csv"), message);
    assertTrue(message.contains(says), message);
  }

  @Test
  void aTableWithoutInjectorsIsRefused() {
    assertEquals(
        "sheet.csv: no line of headings names the column 'injector'; begin the table with a line"
            + " of headings, 'injector' among them.",
        refusal("# pressure_bar: 3\n"));
    assertTrue(refusal("pressure_bar: 3\ninjector,static_mL_min\n").contains("no rows"));
    assertTrue(refusal("What is this\n").contains("neither a setting nor"));
  }

  @Test
  void readsJsonWithTwoBenchesAndARatedFlow() throws IOException {
    Path file = folder.resolve("set.bench.json");
    Files.writeString(
        file,
        """
        { "format": "holdcurve-bench-sheet/1", "title": "Invented",
          "bench": { "pressure_bar": 2.5, "fluid": "n-heptane", "drop_time_min": 1 },
          "bench_before": { "pressure_bar": 3, "fluid": "petrol", "accuracy_percent": 4 },
          "rated": { "static_mL_min": 200, "pressure_bar": 3, "fluid": "n-heptane" },
          "injectors": [ { "id": 1,
            "before": { "static_mL_min": 180 },
            "after": { "dynamic": [ { "pulse_ms": 2.5, "mL_1000": 6 } ], "drops": 0 } } ] }
        """);
    BenchSheet sheet = BenchSheetReader.read(file, LIMITS);
    assertEquals("petrol", sheet.benchBefore().point().fluid().id());
    assertEquals(0.04, sheet.benchBefore().accuracy(), 1e-12);
    double rated = 200e-6 / 60 * Math.sqrt(2.5 / 3);
    assertEquals(rated, sheet.ratedFlow().orElseThrow(), 1e-3 * rated);
    assertEquals("1", sheet.injectors().get(0).id());
  }

  @Test
  void jsonNamesThePlace() throws IOException {
    Path file = folder.resolve("set.bench.json");
    Files.writeString(
        file,
        """
        { "format": "holdcurve-bench-sheet/1", "bench": { "pressure_bar": 2.5 },
          "injectors": [ { "id": "1", "before": { "static_mL_min": "180" } } ] }
        """);
    String message =
        assertThrows(InputException.class, () -> BenchSheetReader.read(file, LIMITS)).getMessage();
    assertTrue(
        message.contains(
            "injectors[0].before.static_mL_min: found \"180\" where a number belongs; give a number"
                + " from 10 to 3000 mL/min."),
        message);
  }
}
