package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import holdcurve.ui.command.HoldcurveCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C in a terminal, which sends the program the signal INT. */
class StopKeyTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private static Path home;

  @TempDir private Path folder;

  private static LaunchedProgram program;

  @BeforeAll
  static void make() throws IOException {
    assumeTrue(LaunchedProgram.isPossible(), "there is no such key here");
    assumeFalse(isDeaf(), "run in the background, where shells make a process deaf to the key");
    program = LaunchedProgram.in(home);
  }

  /** Whether this process ignores the interrupt signal, number 2, as its children then do too. */
  private static boolean isDeaf() throws IOException {
    Path status = Path.of("/proc/self/status");
    return Files.exists(status)
        && Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("SigIgn:"))
            .anyMatch(line -> (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0);
  }

  private Path said() {
    return folder.resolve("said.txt");
  }

  private Process started(String... arguments) throws IOException {
    return program.start("-Xlog:class+load:file=" + loaded(), said(), List.of(arguments));
  }

  private Path loaded() {
    return folder.resolve("loaded.txt");
  }

  /** Until a file has a word in it. */
  private static void await(Path file, String word) throws Exception {
    for (int i = 0; i < 1200; i++) {
      if (Files.exists(file) && Files.readString(file).contains(word)) {
        return;
      }
      Thread.sleep(50);
    }
    throw new AssertionError("never '" + word + "' in " + Files.readString(file));
  }

  private static void press(Process program) throws Exception {
    new ProcessBuilder("/bin/kill", "-INT", Long.toString(program.pid())).start().waitFor();
    assertTrue(program.waitFor(1, TimeUnit.MINUTES), "still running");
    assertEquals(HoldcurveCommand.STOPPED, program.exitValue());
  }

  @Test
  void endsARankingWithASentence() throws Exception {
    Path job = Files.createDirectories(folder.resolve("work")).resolve("car.job.json");
    Files.copy(SCENARIOS.resolve("check-valve.job.json"), job);
    Process process =
        started(
            "report",
            SCENARIOS.resolve("rail-loss.job.json").toString(),
            "--out",
            job.getParent().toString());
    await(loaded(), "holdcurve.inference.fit.FitSearch");
    press(process);
    assertTrue(
        Files.readString(said()).endsWith(HoldcurveCommand.STOPPED_SENTENCE + "\n"),
        said()::toString);
    try (var files = Files.list(job.getParent())) {
      assertEquals(List.of(job), files.toList());
    }
  }

  /** What waits for a line from the keyboard can't be told to stop; it is ended all the same. */
  @Test
  void endsAQuestionWithASentence() throws Exception {
    Process process =
        started("practise", SCENARIOS.resolve("exercises/long-cranking.exercise.json").toString());
    await(said(), "What next?");
    press(process);
    assertTrue(Files.readString(said()).endsWith(HoldcurveCommand.STOPPED_SENTENCE + "\n"));
  }
}
