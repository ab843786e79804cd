package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GaugeLogReaderTest {
  /** psi by NIST SP 811; 50 °F is 10 °C, 283.15 K. */
  @Test
  void convertsToSi() {
    String text = "time_min,pressure_psi,temp_F\n0,36.0,50\n0.5,35.5,\n1,35.0,50\n";
    GaugeLog log = GaugeLogReader.read("typed", text).log();
    assertEquals(36.0 * 6894.757, log.readings().get(0).pressure(), 1e-9);
    assertEquals(283.15, log.readings().get(0).fuelTemperature(), 1e-9);
    assertEquals(30, log.readings().get(1).time());
    assertTrue(Double.isNaN(log.readings().get(1).fuelTemperature()));
    assertEquals(60, log.readings().get(2).time());
  }

  @Test
  void keepsEventsThatHaveNoReading() {
    String text = "time_s,pressure_bar,event\n0,2.5,pump stop\n4,,clamp on\n30,2.4,\n60,2.3,\n";
    GaugeLog log = GaugeLogReader.read("typed", text).log();
    assertEquals(3, log.readings().size());
    assertEquals(new TimedEvent(4, LogEvent.of("clamp on")), log.events().get(1));
  }

  @Test
  void readsFromAReader() throws IOException {
    LogImport read = GaugeLogReader.read("typed", new StringReader("0 2.5\n30 2.4\n60 2.3\n"));
    assertEquals(3, read.log().readings().size());
    assertEquals(0, read.headingLines());
  }

  @Test
  void readsTwoHoursAtTenHertz() {
    StringBuilder text = new StringBuilder("time_s,pressure_bar,fuel_temp_C\n");
    for (int i = 0; i < 72_000; i++) {
      text.append(i / 10).append('.').append(i % 10).append(",2.48,21.5\n");
    }
    GaugeLog log = GaugeLogReader.read("logger", text.toString()).log();
    assertEquals(72_000, log.readings().size());
    assertEquals(7199.9, log.span(), 1e-9);
  }

  @Test
  void refusesTooManyLines() {
    String text = "\n".repeat(LineCursor.MAX_LINES + 1);
    assertEquals(
        "typed: there are more than 1 000 000 lines; thin out the readings.", refusal(text));
  }

  @Test
  void refusesLargeFilesFoldersAndMissingFiles(@TempDir Path folder) throws IOException {
    Path large = folder.resolve("large.csv");
    try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(LogText.MAX_SIZE + 1L);
    }
    assertEquals(
        large
            + ": the file is larger than 32 MB; cut it to the hold itself or thin out the"
            + " readings.",
        refusal(large));
    assertEquals(folder + ": this is a folder; name a file inside it.", refusal(folder));
    Path missing = folder.resolve("missing.csv");
    assertEquals(
        missing + ": there is no such file; check the name and the folder.", refusal(missing));
  }

  @Test
  void passedOverLinesCanBeListedInFull() {
    LogImport read =
        GaugeLogReader.read("typed", "time_s,pressure_bar\n0,2.5\n10,\n20,2.4\n30,2.3\n");
    assertEquals(List.of(new PassedOver(3, "has no pressure", "10,")), read.passedOver());
  }

  @Test
  void aReadingTornApartByItsDecimalCommaIsNotRead() {
    LogImport read = GaugeLogReader.read("typed", "time_s,bar\n0,2.1\n30,1,9\n60,1.8\n90,1.7\n");
    assertEquals(3, read.log().readings().size());
    assertEquals(
        List.of(new PassedOver(3, "has a comma too many, perhaps for a decimal point,", "30,1,9")),
        read.passedOver());
  }

  @Test
  void tooFewReadingsAreSaidWithTheLineThatGaveNone() {
    assertEquals(
        "typed: only 2 usable readings at or after the pump stop; a hold needs at least 3; line 3"
            + " has no readable pressure: '30,two'.",
        refusal("time_s,bar\n0,2.1\n30,two\n60,1.8\n"));
  }

  @Test
  void aForeignUnitIsRefusedHoweverItStandsInTheHeading() {
    for (String heading :
        List.of(
            "pressure_torr",
            "pressure inHg",
            "atü",
            "pressure_furlong",
            "pressure (furlong)",
            "pressure<torr>",
            "pressure.torr",
            "pressure-torr",
            "Pressure: Torr")) {
      String said = refusal("time_s;" + heading + "\n0;2.1\n30;1.9\n60;1.8\n");
      assertTrue(
          said.contains(heading + "' is not known; use bar, mbar, kPa, MPa, psi or kg/cm²"), said);
    }
  }

  @Test
  void aLineWithARemarkAndNoReadingIsMentioned() {
    LogImport read =
        GaugeLogReader.read("typed", "s;bar;remark\n0;2,1;\n30;;phone rang\n60;1,9;\n90;1,8;\n");
    assertTrue(
        read.understood()
            .toString()
            .contains("Line 3 has no pressure, only 'phone rang': kept as a note."),
        read.understood()::toString);
  }

  @Test
  void remarksAboutThePumpDoNotMoveTheStop() {
    LogImport read =
        GaugeLogReader.read(
            "typed",
            "time;bar;remark\n-0:05;2,00;pump still running\n0:00;2,00;\n"
                + "0:30;1,95;drop at the pump union fell off\n1:00;1,90;\n2:00;1,85;\n");
    assertEquals(0, read.log().pumpStop());
    assertTrue(read.log().events().stream().noneMatch(e -> e.event().counts()));
    assertTrue(
        read.understood()
            .toString()
            .contains(
                "Kept as remarks only: 'pump still running' (line 2), 'drop at the pump union fell"
                    + " off' (line 4). To mark when the pump started or stopped, write only 'pump"
                    + " on' or 'pump stop'."),
        read.understood()::toString);
  }

  @Test
  void anEventAndARemarkInOneLineAreBothKept() {
    LogImport read =
        GaugeLogReader.read(
            "typed",
            "time_s;bar;event;remark\n-3;2,4;pump on;\n5;2,5;pump stop;smell of fuel\n"
                + "30;2,4;;\n60;2,3;;\n90;2,2;;\n");
    assertEquals(5, read.log().pumpStop());
    assertEquals("pump stop; smell of fuel", read.log().events().get(1).event().text());
  }

  @Test
  void aSlippedDecimalMarkIsAskedAbout() {
    assertEquals(
        "typed, line 3: the pressure '19.0' is ten times the readings beside it; correct it if 1.90"
            + " was meant, or put '?' behind it if the gauge did show it.",
        refusal("time_s,pressure_bar\n0,2.0\n30,19.0\n60,1.85\n90,1.8\n"));
    assertEquals(
        "typed, line 4: the pressure '0,19' is a tenth of the readings beside it; correct it if 1,9"
            + " was meant, or put '?' behind it if the gauge did show it.",
        refusal("time_s;pressure_bar\n0;2,00\n30;1,95\n60;0,19\n90;1,88\n120;1,8\n"));
    String twenty = "0,1.9\n30,190\n60,1.85\n90,1.8\n";
    assertTrue(
        refusal("time_s,bar\n" + twenty).contains("'190' is a hundred times"), "out of range");
    assertTrue(refusal(twenty).contains("write 1.90 if that was meant"), "no unit given");
  }

  @Test
  void whatTheGaugeDidShowIsTakenWithAQuestionMark() {
    LogImport read = GaugeLogReader.read("typed", "time_s,bar\n0,2.0\n30,19.0?\n60,1.85\n90,1.8\n");
    assertEquals(19e5, read.log().readings().get(1).pressure());
  }

  @Test
  void aLastReadingOfATenthIsTakenAndAskedAbout() {
    LogImport read =
        GaugeLogReader.read("typed", "time_s,bar\n0,2.0\n30,1.95\n60,1.90\n90,0.189\n");
    assertEquals(4, read.log().readings().size());
    assertTrue(
        read.understood()
            .toString()
            .contains("Line 5: the pressure '0.189' is a tenth of the readings beside it"),
        read.understood()::toString);
  }

  /** So that all of it can be put right at once. */
  @Test
  void saysAllSlipsOfALog() {
    StringBuilder text = new StringBuilder("time_s,pressure_bar\n");
    for (int i = 0; i < 40; i++) {
      text.append(i).append(i % 3 == 1 ? ",19.0\n" : ",1.9\n");
    }
    List<String> lines = refusal(text.toString()).lines().toList();
    assertEquals(11, lines.size());
    assertTrue(lines.get(1).startsWith("typed, line 6: the pressure '19.0'"), lines.get(1));
    assertEquals("There are 3 more like these.", lines.get(10));
  }

  private static String refusal(String text) {
    return assertThrows(InputException.class, () -> GaugeLogReader.read("typed", text))
        .getMessage();
  }

  private static String refusal(Path file) {
    return assertThrows(InputException.class, () -> GaugeLogReader.read(file)).getMessage();
  }
}
