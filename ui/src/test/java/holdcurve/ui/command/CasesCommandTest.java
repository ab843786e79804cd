package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The case book at the command line, in a home of its own. */
class CasesCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;
  private String home;

  @BeforeEach
  void moveHome() {
    home = System.setProperty("user.home", folder.resolve("home").toString());
  }

  @AfterEach
  void moveBack() {
    System.setProperty("user.home", home);
  }

  private static Console run(String... words) {
    Console console = Console.run(words);
    assertEquals(0, console.exitCode(), console.err());
    console
        .out()
        .lines()
        .filter(l -> !l.contains("/"))
        .forEach(l -> assertTrue(l.length() <= 80, l));
    return console;
  }

  @Test
  void aFolderIsKeptAndSearched() throws IOException {
    Console none = Console.run("cases");
    assertEquals(2, none.exitCode());
    assertTrue(none.err().contains("the case book has no folder yet"), none.err());
    run("cases", SCENARIOS.toString(), "--keep");
    assertTrue(run("cases").out().contains("9 jobs."));
    Path csv = folder.resolve("cases.csv");
    Path json = folder.resolve("cases.json");
    Console some =
        run(
            "cases",
            "--search",
            "renewed",
            "--state",
            "Held",
            "--sort",
            "car",
            "--csv",
            csv.toString(),
            "--json",
            json.toString());
    assertTrue(some.out().contains("2 jobs shown."), some.out());
    List<String> lines = Files.readAllLines(csv);
    assertEquals("# holdcurve-cases/1", lines.get(0));
    assertEquals(4, lines.size());
    assertTrue(lines.get(2).contains("held, not checked"), lines.get(2));
    JsonNode root = new ObjectMapper().readTree(json.toFile());
    assertEquals("holdcurve-cases/1", root.path("format").asText());
    assertEquals(2, root.path("cases").size());
  }

  @Test
  void aProvedRepairTeachesAndTheUserCanSayOtherwise() {
    run("cases", SCENARIOS.toString(), "--keep", "--search", "Check valve renewed", "--rank");
    assertTrue(run("cases", "--state", "proved").out().contains("The next hold proved it."));
    assertTrue(run("cases", "rates").out().contains("Yours rest on 1 confirmed case."));
    String job = SCENARIOS.resolve("repaired-check-valve.job.json").toString();
    run("cases", "correct", job, "--no-fault");
    assertTrue(run("cases", "rates").out().contains("Yours rest on 0 confirmed cases."));
    run("cases", "correct", job, "--fault", "injector-tip", "--car", "AB 123");
    assertTrue(run("cases", "--search", "ab").out().contains("It was: Injector drips at its tip."));
  }

  @Test
  void ownRatesAreSaidWhereverTheyAreUsed() {
    String job = SCENARIOS.resolve("acceptable-fall.job.json").toString();
    Path rates = folder.resolve("rates.json");
    run("cases", SCENARIOS.toString(), "--keep");
    run("cases", "correct", job, "--fault", "gauge-tee");
    run("cases", "rates", "--use", "own", "--export", rates.toString());
    assertTrue(run("rank", job).out().contains("Own fault rates"));
    assertTrue(!run("rank", job, "--shipped-rates").out().contains("Own fault rates"));
    run("cases", "rates", "--use", "shipped");
    assertTrue(!run("rank", job).out().contains("Own fault rates"));
    assertTrue(run("rank", job, "--own-rates", rates.toString()).out().contains("Own fault rates"));
  }
}
