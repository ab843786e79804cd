package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.command.HoldcurveCommand;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip in the name of a result costs no readings. */
class OverwritingTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;

  @BeforeEach
  void copy() throws IOException {
    for (String name :
        new String[] {
          "circuits/six-cylinder-return-line.circuit.json",
          "logs/sound-base.csv",
          "bench/six-as-they-came.bench.json"
        }) {
      Path from = SCENARIOS.resolve(name);
      Files.copy(from, folder.resolve(from.getFileName()));
    }
  }

  private String run(String command) {
    StringWriter err = new StringWriter();
    HoldcurveCommand.commandLine(new PrintWriter(new StringWriter()), new PrintWriter(err))
        .execute(command.replace("IN/", folder + "/").split(" "));
    return err.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "simulate IN/six-cylinder-return-line.circuit.json --log IN/,"
        + " six-cylinder-return-line.circuit.json",
    "simulate IN/six-cylinder-return-line.circuit.json --log IN/, sound-base.csv",
    "simulate IN/six-cylinder-return-line.circuit.json --json IN/,"
        + " six-cylinder-return-line.circuit.json",
    "bench-sheet IN/six-as-they-came.bench.json --csv IN/, sound-base.csv",
    "bench-sheet IN/six-as-they-came.bench.json --json IN/, six-as-they-came.bench.json",
    "faults --json IN/, sound-base.csv"
  })
  void whatAPersonPutInStays(String command, String name) throws IOException {
    Path file = folder.resolve(name);
    String before = Files.readString(file);
    String said = run(command + name);
    assertTrue(said.contains("stands there, which a result must not replace"), said);
    assertEquals(before, Files.readString(file));
  }

  @Test
  void aSimulatedLogIsMarkedAndMayBeReplaced() throws IOException {
    String command = "simulate IN/six-cylinder-return-line.circuit.json --log IN/out.csv";
    assertEquals("", run(command + " --hold 5"));
    assertEquals("", run(command + " --hold 1"));
    String log = Files.readString(folder.resolve("out.csv"));
    assertTrue(log.startsWith("# holdcurve-simulation/1: simulated, not read\n"), log);
    assertEquals(6, log.lines().count(), log);
  }
}
