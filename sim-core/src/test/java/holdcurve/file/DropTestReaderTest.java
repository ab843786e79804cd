package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.droptest.Firing;
import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DropTestReaderTest {
  private static final String TABLE =
      """
      # gauge_resolution_bar: 0.05
      # fire_s: 0.25
      # wait_s: 8
      # idle_s: 60
      injector,before_bar,after_bar
      1,2.00,1.40
      2,1.95,1.35
      idle,2.00,1.95
      """;

  @TempDir private Path folder;

  @Test
  void readsATableAndWritesItAgain() {
    DropTest test = DropTestReader.read("drops.csv", TABLE);
    assertEquals(List.of("1", "2"), test.injectors());
    assertEquals(new Firing("2", 1.95e5, 1.35e5), test.firings().get(1));
    assertEquals(60, test.idleFalls().get(0).time(), 0);
    assertEquals(0.25, test.shot().openTime(), 1e-12);
    DropTest again = DropTestReader.read("drops.csv", DropReportWriter.table(test));
    assertEquals(test.firings(), again.firings());
    assertEquals(test.idleFalls(), again.idleFalls());
    assertEquals(test.shot().openTime(), again.shot().openTime(), 1e-12);
  }

  @Test
  void readsPsiAndAThirdReading() {
    String psi =
        "gauge_resolution_psi: 0.5\nfire_s: 0.25\nwait_s: 8\nlater_s: 60\nidle_s: 60\n"
            + "injector,before_psi,after_psi,later_psi\n1,29,20,19.5\n2,28.5,19,\nidle,29,28.5,\n";
    DropTest test = DropTestReader.read("drops.csv", psi);
    assertEquals(29 * 6894.757, test.firings().get(0).before(), 1e-6);
    assertEquals(19.5 * 6894.757, test.firings().get(0).later().orElseThrow(), 1e-6);
    assertTrue(test.firings().get(1).later().isEmpty());
    assertEquals(60, test.watch(), 0);
    DropTest again = DropTestReader.read("drops.csv", DropReportWriter.table(test));
    assertEquals(2, again.firings().size());
    assertTrue(again.firings().get(0).later().isPresent());
    String without =
        assertThrows(
                InputException.class,
                () -> DropTestReader.read("drops.csv", psi.replace("later_s: 60\n", "")))
            .getMessage();
    assertTrue(without.contains("say how long after the second reading"), without);
    String rises =
        assertThrows(
                InputException.class,
                () -> DropTestReader.read("drops.csv", psi.replace("20,19.5", "20,20.5")))
            .getMessage();
    assertTrue(rises.contains("20.5 psi is not below the 20 psi after the firing"), rises);
  }

  @Test
  void readsJsonWithADrawOff() throws IOException {
    Path file = folder.resolve("car.drops.json");
    Files.writeString(
        file,
        """
        { "format": "holdcurve-drop-test/1", "gauge_resolution_bar": 0.05, "pulses": 100,
          "pulse_ms": 3, "wait_s": 5, "drawn_mL": 2, "drawn_from_bar": 2, "drawn_to_bar": 1.2,
          "readings": [ { "injector": 1, "before_bar": 2, "after_bar": 1.5 },
                        { "injector": 2, "before_bar": 2, "after_bar": 1.6 } ] }
        """);
    DropTest test = DropTestReader.read(file);
    assertEquals(0.3, test.shot().openTime(), 1e-12);
    assertEquals(2e-6, test.drawOff().orElseThrow().volume(), 1e-18);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2,1.95,1.35 | 2,1.95,2.05 | line 7, after_bar: 2.05 bar is not below the 1.95 bar before",
        "2,1.95,1.35 | 2,1.95,1.95 | fire longer",
        "2,1.95,1.35 | 2,1.95,x | line 7, after_bar: found \"x\" where a number belongs",
        "2,1.95,1.35 | 1,1.95,1.35 | only 1 injector was fired; compare at least two",
        "# wait_s: 8 | # notes: none | 'wait_s' is missing; say how long after",
        "# fire_s: 0.25 | # notes: none | 'pulses' is missing; say how long it was fired",
        "# idle_s: 60 | # notes: none | 'idle_s' is missing; say how long the gauge was watched",
        "# fire_s | # fires | line 2, fires: unknown entry 'fires'",
      })
  void saysWhatIsWrong(String old, String changed, String says) {
    String text = TABLE.replace(old, changed);
    InputException e =
        assertThrows(InputException.class, () -> DropTestReader.read("drops.csv", text));
    assertTrue(e.getMessage().startsWith("drops.csv"), e.getMessage());
    assertTrue(e.getMessage().contains(says), e.getMessage());
  }
}
