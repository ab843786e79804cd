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

/** The refit list at a terminal. */
class RefitCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;
  private Path job;

  @BeforeEach
  void copyScenario() throws IOException {
    Files.copy(
        SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json"),
        folder.resolve("car.circuit.json"));
    Files.copy(SCENARIOS.resolve("logs/sound-base.csv"), folder.resolve("log.csv"));
    job = folder.resolve("car.job.json");
    Files.writeString(
        job,
        """
        { "format": "holdcurve-job/1", "title": "A job (invented)", "circuit": "car.circuit.json",
          "tests": [ { "id": "first", "log": "log.csv" } ] }
        """);
  }

  private Console refit(String... more) {
    String[] arguments = new String[2 + more.length];
    arguments[0] = "refit";
    arguments[1] = job.toString();
    System.arraycopy(more, 0, arguments, 2, more.length);
    return Console.run(arguments);
  }

  @Test
  void lookingChangesNothing() throws IOException {
    String before = Files.readString(job);
    Console shown = refit();
    assertEquals(0, shown.exitCode(), shown.err());
    assertTrue(shown.out().contains("[ ] seals-new"), shown.out());
    assertTrue(
        shown.out().replaceAll("\\s+", " ").contains("terminal 30 (battery) to 87"), shown.out());
    assertEquals(before, Files.readString(job));
  }

  @Test
  void aTickIsKeptWithDateAndInitials() {
    Console ticked = refit("--tick", "seals-new", "--by", "AB", "--date", "2026-04-11");
    assertEquals(0, ticked.exitCode(), ticked.err());
    assertTrue(refit().out().contains("[x] seals-new  (2026-04-11 AB)"));
    assertTrue(refit().out().contains("1 of 17 done; next: workplace"), refit().out());
    refit("--untick", "seals-new");
    assertFalse(refit().out().contains("[x]"));
  }

  @Test
  void whatIsMissingIsAskedFor() {
    Console nobody = refit("--tick", "seals-new");
    assertEquals(2, nobody.exitCode());
    assertEquals(
        "command line, --tick seals-new: a tick needs initials of 1 to 12 characters; add --by and"
            + " who did it.",
        nobody.err().strip());
    Console unknown = refit("--tick", "seels-new", "--by", "AB");
    assertEquals(2, unknown.exitCode());
    assertTrue(
        unknown.err().startsWith("command line, --tick seels-new: the list has no such step; use"),
        unknown.err());
  }
}
