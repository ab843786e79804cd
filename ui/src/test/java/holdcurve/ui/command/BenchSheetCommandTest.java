package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped bench sheets, as a user would ask about them. */
class BenchSheetCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;

  private static Console sheet(String name, String... more) {
    String[] args = new String[4 + more.length];
    args[0] = "bench-sheet";
    args[1] = SCENARIOS.resolve("bench").resolve(name).toString();
    args[2] = "--today";
    args[3] = "2026-11-20";
    System.arraycopy(more, 0, args, 4, more.length);
    Console console = Console.run(args);
    assertEquals(0, console.exitCode(), console.err());
    return console;
  }

  @Test
  void serviceBroughtWhatItUsuallyDoes() throws IOException {
    Path json = folder.resolve("report.json");
    String circuit = SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json").toString();
    String out =
        sheet("six-before-and-after.csv", "--circuit", circuit, "--json", json.toString()).out();
    assertTrue(out.contains("Not all fit\nInjector 4 drips"), out);
    assertTrue(out.contains("After the service five of six are surely in line"), out);
    assertTrue(out.contains("+10 % flow, as a service usually does"), out);
    assertTrue(out.contains("Injector 4 drips: 3 drops in 2 min"), out);
    assertTrue(out.contains("Refit by 24 November 2026"), out);
    assertTrue(out.lines().allMatch(line -> line.length() < 80), out);
    JsonNode report = new ObjectMapper().readTree(json.toFile());
    assertEquals("holdcurve-bench-report/1", report.get("format").asText());
    assertEquals(2.0, report.at("/at/pressure_bar").asDouble(), 1e-9);
    assertEquals(181, report.at("/set_after/mean_mL_min/middle").asDouble() / 0.784, 1);
  }

  @Test
  void theLowOneIsWorthAService() {
    String out = sheet("six-as-they-came.bench.json").out();
    assertTrue(out.contains("4 (17 % low)") || out.contains("4 (16 % low)"), out);
    assertTrue(out.contains("worth a service"), out);
    assertTrue(out.contains("time offset"), out);
  }

  @Test
  void makesMatchedSets() {
    String out = sheet("thirteen-to-match.csv", "--sets-of", "6").out();
    assertTrue(out.contains("Matched sets"), out);
    assertTrue(out.contains("not fit to refit: B3"), out);
  }

  @Test
  void tooLargeASetIsBadInput() {
    Console console =
        Console.run(
            "bench-sheet",
            SCENARIOS.resolve("bench/six-before-and-after.csv").toString(),
            "--sets-of",
            "9");
    assertEquals(2, console.exitCode());
    assertEquals(
        "command line, --sets-of 9: only 5 injectors are fit to be matched; give 2 to 5.",
        console.err().strip());
  }

  /** The year before on another bench, in psi and with another fluid. */
  @Test
  void theTrendOfASetIsShown() {
    String earlier = SCENARIOS.resolve("bench/six-a-year-before.csv").toString();
    String out = sheet("six-before-and-after.csv", "--earlier", earlier).out();
    assertTrue(out.contains("3: passes less than it did"), out);
    assertTrue(out.contains("1: no change that the bench can show"), out);
    assertTrue(out.lines().allMatch(line -> line.length() <= 80), out);
  }

  @Test
  void theSheetIsDrawnOnOnePage() throws IOException {
    for (String name :
        List.of(
            "six-before-and-after.csv", "thirteen-to-match.csv", "six-as-they-came.bench.json")) {
      Path pdf = folder.resolve(name + ".pdf");
      String out = sheet(name, "--pdf", pdf.toString()).out();
      assertTrue(out.contains("Drawn to"), out);
      try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
        assertEquals(1, document.getNumberOfPages(), name);
        String text = new PDFTextStripper().getText(document);
        for (String said :
            List.of("To do", "Mixture", "even cone", "lean", "rich", "no source", "Span and")) {
          assertTrue(text.contains(said), said + " in " + text);
        }
      }
    }
  }

  @Test
  void whatIsDrawnAndSavedReplacesNoOtherFile() throws IOException {
    Path there = folder.resolve("readings.csv");
    Files.writeString(there, "time_s,pressure_bar\n0,2\n");
    String six = SCENARIOS.resolve("bench/six-before-and-after.csv").toString();
    for (String option : List.of("--pdf", "--sheet")) {
      Console console = Console.run("bench-sheet", six, option, there.toString());
      assertEquals(2, console.exitCode());
      assertTrue(Files.readString(there).startsWith("time_s"), option);
    }
    Path saved = folder.resolve("saved.csv");
    sheet("six-before-and-after.csv", "--sheet", saved.toString());
    assertEquals(0, Console.run("bench-sheet", saved.toString()).exitCode());
  }
}
