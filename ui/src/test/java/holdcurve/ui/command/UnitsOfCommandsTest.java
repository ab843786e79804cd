package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.GaugeLogReader;
import holdcurve.record.log.GaugeLogWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every command that prints pressures prints them in the reader's unit. */
class UnitsOfCommandsTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  private static final Pattern IN_BAR = Pattern.compile("[0-9] bar\\b");

  /** Commands that print no pressure of a circuit, and one whose parts have the option. */
  private static final Set<String> WITHOUT =
      Set.of(
          "refit", "faults", "job", "cases", "window", "report-problem", "about", "guide", "help");

  @TempDir private Path folder;

  private static Console run(String words) {
    return Console.run(
        Arrays.stream(words.split(" "))
            .map(word -> word.matches(".*\\.(json|csv)") ? SCENARIOS.resolve(word) + "" : word)
            .toArray(String[]::new));
  }

  @Test
  void everyOtherCommandHasTheOption() {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    HoldcurveCommand.commandLine(nowhere, nowhere)
        .getSubcommands()
        .forEach(
            (name, line) ->
                assertEquals(
                    !WITHOUT.contains(name),
                    line.getCommandSpec().optionsMap().containsKey("--units"),
                    name));
  }

  @ParameterizedTest
  @CsvSource({
    "check repaired-check-valve.job.json --units kPa, Pressure in kPa",
    "drop-test bench/drops-two-times.csv --units psi, psi",
    "bench-sheet bench/six-as-they-came.bench.json --units kPa, kPa",
    "simulate circuits/four-cylinder-damper.circuit.json --hold 1 --units psi, pressure_psi",
    "whatif --circuit circuits/four-cylinder-damper.circuit.json --fuel petrol-e10 --units kPa,"
        + " 'Hold, no clamp, kPa'"
  })
  void theChosenUnitIsUsedThroughout(String words, String said) {
    Console console = run(words);
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().contains(said), console.out());
    assertFalse(IN_BAR.matcher(console.out()).find(), console.out());
    console.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  void theUnitOfTheLogIsTheUsualOne() throws IOException {
    Path log = folder.resolve("log.csv");
    GaugeLog read = GaugeLogReader.read(SCENARIOS.resolve("logs/check-valve-base.csv")).log();
    Files.writeString(log, GaugeLogWriter.write(read, PressureUnit.PSI));
    String circuit = SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json").toString();
    Console ranked = Console.run("rank", "--circuit", circuit, log.toString());
    assertTrue(ranked.out().contains("leak at 29 psi"), ranked.out());
    assertFalse(IN_BAR.matcher(ranked.out()).find(), ranked.out());
    String job = folder.resolve("car.job.json").toString();
    assertEquals(0, Console.run("job", "new", job, "--circuit", circuit).exitCode());
    assertEquals(0, Console.run("job", "test", job, log.toString()).exitCode());
    Console noted =
        Console.run("job", "draw-off", job, "--drawn", "9", "--from", "29", "--to", "22");
    assertEquals("Noted: 9.0 mL drawn off from 29.0 to 22.0 psi.", noted.out().strip());
    Console shown = Console.run("job", "show", job, "--units", "bar");
    assertTrue(shown.out().contains("9.0 mL drawn off from 2.00 to 1.52 bar"), shown.out());
  }

  @ParameterizedTest
  @CsvSource({"BAR", "KPA", "PSI"})
  void aLogIsTheSameInEveryUnit(PressureUnit unit) throws IOException {
    Path log = folder.resolve("log.csv");
    GaugeLog read = GaugeLogReader.read(SCENARIOS.resolve("logs/check-valve-base.csv")).log();
    Files.writeString(log, GaugeLogWriter.write(read, unit));
    GaugeLog again = GaugeLogReader.read(log).log();
    for (int i = 0; i < read.readings().size(); i++) {
      assertEquals(read.readings().get(i).pressure(), again.readings().get(i).pressure(), 1);
    }
  }
}
