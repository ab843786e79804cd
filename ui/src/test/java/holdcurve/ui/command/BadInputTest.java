package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person gets to read when something they gave can't be used: one sentence, exit code 2. */
class BadInputTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;
  private Path circuit;

  @BeforeEach
  void copyScenario() throws IOException {
    circuit = folder.resolve("car.circuit.json");
    Files.copy(SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json"), circuit);
    Files.copy(SCENARIOS.resolve("logs/sound-base.csv"), folder.resolve("log.csv"));
    Files.writeString(
        folder.resolve("car.job.json"),
        """
        { "format": "holdcurve-job/1", "title": "A job (invented)", "circuit": "car.circuit.json",
          "tests": [ { "id": "first", "log": "log.csv" } ] }
        """);
  }

  private void says(Console console, String sentence) {
    assertEquals(2, console.exitCode(), console.err());
    assertEquals(folder + sentence, console.err().strip());
    assertEquals("", console.out());
  }

  private void replaceInCircuit(String old, String changed) throws IOException {
    String text = Files.readString(circuit);
    assertTrue(text.contains(old));
    Files.writeString(circuit, text.replace(old, changed));
  }

  private Console rank() {
    return Console.run("rank", folder.resolve("car.job.json").toString());
  }

  @Test
  void missingJob() {
    says(
        Console.run("rank", folder.resolve("no.job.json").toString()),
        "/no.job.json: there is no such file; check the name and the folder.");
  }

  @Test
  void missingCircuit() throws IOException {
    Files.delete(circuit);
    says(
        rank(),
        "/car.job.json, line 1, circuit: there is no file 'car.circuit.json'; check the name and"
            + " the folder.");
  }

  @Test
  void malformedJson() throws IOException {
    replaceInCircuit("\"title\"", "title\"");
    Console console = rank();
    assertEquals(2, console.exitCode());
    assertTrue(
        console.err().startsWith(folder + "/car.circuit.json, line 3, column "), console.err());
    assertTrue(console.err().contains("found 't' where a name in quotes belongs"), console.err());
    assertEquals(1, console.err().strip().lines().count());
  }

  @Test
  void unknownKindOfPart() throws IOException {
    replaceInCircuit("\"kind\": \"damper\"", "\"kind\": \"dampener\"");
    Console console = rank();
    assertEquals(2, console.exitCode());
    assertTrue(
        console
            .err()
            .startsWith(
                folder
                    + "/car.circuit.json, line 14, parts[7].kind: unknown kind of part"
                    + " \"dampener\"; use one of tank, pump, check-valve,"),
        console.err());
  }

  @Test
  void wrongUnit() throws IOException {
    replaceInCircuit("\"length_m\": 0.8", "\"length_cm\": 80");
    says(
        rank(),
        "/car.circuit.json, line 12, parts[5].length_cm: the unit of 'length' is not understood;"
            + " write it in m as 'length_m'.");
  }

  @Test
  void valueOutOfRange() throws IOException {
    replaceInCircuit("\"length_m\": 0.8", "\"length_m\": 800");
    says(
        rank(),
        "/car.circuit.json, line 12, parts[5].length_m: 800 m is out of range;"
            + " give a number from 0.01 to 20 m.");
  }

  @Test
  void emptyLog() throws IOException {
    Files.writeString(folder.resolve("log.csv"), "");
    Console console = rank();
    assertEquals(2, console.exitCode());
    assertTrue(console.err().startsWith(folder + "/log.csv"), console.err());
    assertEquals(1, console.err().strip().lines().count());
  }

  @Test
  void aLineThatEndsNowhere() throws IOException {
    replaceInCircuit("\"to\": \"filter-outlet\"", "\"to\": \"filter-outlett\"");
    says(
        rank(),
        "/car.circuit.json, line 11, parts[4]: filter 'filter' ends at 'filter-outlett', which no"
            + " other part names; join it to a connection point of another part.\n"
            + folder
            + "/car.circuit.json, line 12, parts[5]: hose 'feed-hose' ends at 'filter-outlet', which"
            + " no other part names; join it to a connection point of another part.");
  }

  @Test
  void newerFormat() throws IOException {
    replaceInCircuit("holdcurve-circuit/1", "holdcurve-circuit/2");
    says(
        rank(),
        "/car.circuit.json, line 2, format: this file is of the newer format holdcurve-circuit/2;"
            + " open it with a newer Holdcurve; this one understands up to holdcurve-circuit/1.");
  }

  @Test
  void aLogOutsideTheFolders() throws IOException {
    Path job = folder.resolve("car.job.json");
    Files.writeString(job, Files.readString(job).replace("log.csv", "../../../log.csv"));
    says(
        rank(),
        "/car.job.json, line 2, tests[0].log: '../../../log.csv' leads out of the folder of this"
            + " file; keep the file beside it or in a folder beside it.");
  }

  @Test
  void aHoseThatCannotBeClamped() throws IOException {
    Path job = folder.resolve("car.job.json");
    Files.writeString(
        job, Files.readString(job).replace("\"log\"", "\"clamped\": [\"ring-hoses\"], \"log\""));
    says(
        rank(),
        "/car.job.json, line 2, tests[0].clamped[0]: no hose 'ring-hoses' that can be clamped; in"
            + " this circuit one can clamp feed-hose and return-hose.");
  }

  @Test
  void unknownFault() {
    Console console = Console.run("simulate", circuit.toString(), "--fault", "gremlin");
    assertEquals(2, console.exitCode());
    assertTrue(
        console
            .err()
            .startsWith("command line, --fault gremlin: there is no such fault; use one of"),
        console.err());
  }

  @Test
  void unknownOptionIsBadInputToo() {
    Console console = Console.run("rank", "--wat");
    assertEquals(2, console.exitCode());
    assertFalse(console.err().contains("\tat "), console.err());
  }
}
