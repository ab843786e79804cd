package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A logger's file of two hours at 10 Hz, in the packaged program with 256 MB of memory. */
class LongLogTest {
  private static final String CIRCUIT = "six-cylinder-return-line.circuit.json";
  private static final Path CIRCUITS =
      Path.of(System.getProperty("holdcurve.root"), "scenarios", "circuits");
  private static final String JOB =
      """
      {
        "format": "holdcurve-job/1",
        "title": "Two hours at 10 Hz (invented)",
        "circuit": "%s",
        "tests": [{"id": "hold", "log": "logger.csv"}]
      }
      """
          .formatted(CIRCUIT);

  @TempDir private Path folder;

  @Test
  void twoHoursAtTenHertzAreReadPlottedAndRankedInLittleMemory() throws Exception {
    assumeTrue(LaunchedProgram.isPossible(), "no shell to start it from");
    Path circuit = Files.copy(CIRCUITS.resolve(CIRCUIT), folder.resolve(CIRCUIT));
    BigLog.write(folder.resolve("logger.csv"), circuit, 0.1);
    Path job = Files.writeString(folder.resolve("long.job.json"), JOB);
    Path said = folder.resolve("said.txt");
    Process program =
        LaunchedProgram.in(folder.resolve("holdcurve"))
            .start("-Xmx256m", said, List.of("report", job.toString(), "--out", folder.toString()));
    assertTrue(program.waitFor(10, TimeUnit.MINUTES), "no end");
    assertEquals(0, program.exitValue(), () -> said(said));
    String page = Files.readString(folder.resolve("long.report.html"));
    assertTrue(page.contains("72001 readings of the hold over 7200 s"), page);
    assertTrue(page.contains("Leaking"), page);
    assertTrue(page.contains("<svg"), "no plot");
    assertTrue(page.length() < 200_000, () -> "a plot of " + page.length() + " characters");
    assertTrue(Files.size(folder.resolve("long.report.pdf")) > 10_000);
  }

  private static String said(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      return e.toString();
    }
  }
}
