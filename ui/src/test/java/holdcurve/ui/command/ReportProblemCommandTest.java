package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.about.Build;
import holdcurve.ui.problem.ProblemFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportProblemCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final String CIRCUIT = "circuits/six-cylinder-return-line.circuit.json";
  private static final String FIRST_LOG = "logs/check-valve-base.csv";
  private static final String SECOND_LOG = "logs/check-valve-feed-clamped.csv";

  @TempDir private Path folder;
  private Path job;
  private Path zip;

  @BeforeEach
  void copyScenario() throws IOException {
    for (String name : Set.of(CIRCUIT, FIRST_LOG, SECOND_LOG, "check-valve.job.json")) {
      Files.createDirectories(folder.resolve(name).getParent());
      Files.copy(SCENARIOS.resolve(name), folder.resolve(name));
    }
    job = folder.resolve("check-valve.job.json");
    zip = folder.resolve("check-valve.problem.zip");
  }

  private Map<String, String> contents() throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        contents.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    contents.keySet().removeIf(name -> name.startsWith("window/"));
    return contents;
  }

  @Test
  void holdsTheJobItsFilesWhatHappenedAndTheVersionAndSaysSo() throws IOException {
    Console console = Console.run("report-problem", job.toString());
    assertEquals(0, console.exitCode(), console.err());
    Map<String, String> contents = contents();
    assertEquals(
        Set.of(
            "job/check-valve.job.json",
            "job/" + CIRCUIT,
            "job/" + FIRST_LOG,
            "job/" + SECOND_LOG,
            "what-happened.txt",
            "version.txt"),
        contents.keySet());
    for (String name : contents.keySet()) {
      assertTrue(console.out().contains("  " + name + " "), console.out());
    }
    assertEquals(Files.readString(job), contents.get("job/check-valve.job.json"));
    assertTrue(contents.get("version.txt").startsWith("Holdcurve " + Build.version() + "\n"));
    assertTrue(contents.get("what-happened.txt").contains("Check valve leaks back to the tank"));
    assertTrue(console.out().contains("Ranking it again worked."), console.out());
    assertTrue(console.out().contains("Nothing was sent."), console.out());
  }

  @Test
  void aJobThatCannotBeReadIsPackedWithTheReason() throws IOException {
    Files.writeString(job, Files.readString(job).replace("\"class_percent\": 1.6,", "1.6 ]"));
    Files.delete(folder.resolve(SECOND_LOG));
    Console console = Console.run("report-problem", job.toString());
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(contents().containsKey("job/" + FIRST_LOG));
    assertTrue(contents().get("what-happened.txt").contains("InputException"));
    assertTrue(console.out().contains("Ranking it again failed: "), console.out());
    assertTrue(
        console.out().contains("not in it: " + SECOND_LOG + ": there is no such file"),
        console.out());
  }

  @Test
  void filesElsewhereStayThere() throws IOException {
    Path deep = Files.createDirectories(folder.resolve("cars/mine"));
    Path moved = Files.copy(job, deep.resolve("mine.job.json"));
    Files.writeString(moved, Files.readString(moved).replace("logs/", "../../logs/"));
    zip = folder.resolve("out.zip");
    Console console =
        Console.run(
            "report-problem", moved.toString(), "--without-ranking", "--out", zip.toString());
    assertEquals(0, console.exitCode(), console.err());
    assertEquals(
        Set.of("job/mine.job.json", "what-happened.txt", "version.txt"), contents().keySet());
    assertTrue(console.out().contains("../../" + FIRST_LOG + ": lies elsewhere"), console.out());
  }

  @Test
  void replacesAnEarlierReportAndNothingElse() throws IOException {
    String before = Files.readString(job);
    Console console =
        Console.run("report-problem", job.toString(), "--without-ranking", "--out", job.toString());
    assertEquals(2, console.exitCode());
    assertTrue(console.err().contains("something else stands there"), console.err());
    assertEquals(before, Files.readString(job));
    for (int i = 0; i < 2; i++) {
      assertEquals(
          0, Console.run("report-problem", job.toString(), "--without-ranking").exitCode());
    }
    assertTrue(Files.isRegularFile(zip));
  }

  @Test
  void theHomeOfThePersonIsNotNamed() {
    String home = System.getProperty("user.home");
    ProblemFile problem = ProblemFile.of(job, "reading " + home + "/cars/mine.job.json");
    String happened =
        problem.entries().stream()
            .filter(one -> one.name().equals("what-happened.txt"))
            .map(one -> new String(one.content(), StandardCharsets.UTF_8))
            .findFirst()
            .orElseThrow();
    assertFalse(happened.contains(home), happened);
    assertEquals("reading ~/cars/mine.job.json", happened);
  }
}
