package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.common.input.InputException;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import holdcurve.record.refit.RefitList;
import holdcurve.record.refit.RefitTick;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Repairs, pass limit and refit list in a job file. */
class UpkeepFileTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void copyCircuitAndLog() throws IOException {
    Files.copy(
        SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json"),
        folder.resolve("car.circuit.json"));
    Files.copy(SCENARIOS.resolve("logs/sound-base.csv"), folder.resolve("log.csv"));
    file = folder.resolve("car.job.json");
  }

  private Job read(String more) throws IOException {
    Files.writeString(
        file,
        """
        { "format": "holdcurve-job/1", "title": "A job (invented)", "circuit": "car.circuit.json",
          "notes": "kept", "tests": [ { "id": "first", "log": "log.csv", "date": "2026-04-10" } ]
        """
            + more
            + "}\n");
    return JobReader.read(file);
  }

  private void refuses(String more, String sentence) {
    String message = assertThrows(InputException.class, () -> read(more)).getMessage();
    assertTrue(message.endsWith(sentence), message);
  }

  @Test
  void whatIsNotStatedIsTheUsual() throws IOException {
    Job job = read("");
    assertEquals(List.of(), job.upkeep().repairs());
    assertEquals(1.7e5, job.upkeep().pass().pressure(), 1);
    assertEquals(300, job.upkeep().pass().time());
    assertEquals(RefitList.shipped(), job.upkeep().refit());
  }

  @Test
  void everyEntryIsRead() throws IOException {
    Job job =
        read(
            """
            , "repairs": [ { "date": "2026-04-11", "part": "check-valve", "fault": "check-valve-seat",
                "after_test": "first", "note": "renewed" } ],
              "pass": { "least_bar": 1.8, "after_min": 10 },
              "refit": [ { "id": "seals-new", "done": "2026-04-11", "by": "AB" },
                { "id": "own", "text": "Sweep the floor." } ]
            """);
    assertEquals(
        List.of(
            new Repair(
                LocalDate.of(2026, 4, 11), "check-valve", "check-valve-seat", "first", "renewed")),
        job.upkeep().repairs());
    assertEquals(1.8e5, job.upkeep().pass().pressure(), 1e-6);
    assertEquals(600, job.upkeep().pass().time());
    RefitList refit = job.upkeep().refit();
    assertEquals(
        RefitList.shipped().step("seals-new").orElseThrow().text(), refit.steps().get(0).text());
    assertEquals("AB", refit.steps().get(0).tick().orElseThrow().by());
    assertEquals("own", refit.next().orElseThrow().id());
  }

  @Test
  void whatCannotBeUsedIsSaid() {
    refuses(
        ", \"repairs\": [ { \"date\": \"11.4.2026\" } ]",
        "repairs[0].date: '11.4.2026' is no date; write year, month and day as 2026-04-11.");
    refuses(
        ", \"repairs\": [ { \"date\": \"2026-04-11\", \"after_test\": \"second\" } ]",
        "repairs[0].after_test: there is no test 'second'; use one of first.");
    refuses(
        ", \"pass\": { \"least\": 1.7 }",
        "pass.least: unknown entry; known here: after_min and least_bar.");
    refuses(
        ", \"refit\": [ { \"id\": \"own\" } ]",
        "refit[0]: 'text' is missing; say what to do at this step.");
    refuses(
        ", \"refit\": [ { \"id\": \"seals-new\", \"done\": \"2026-04-11\" } ]",
        "refit[0]: only one of 'done' and 'by' is there; give the date and the initials, or"
            + " neither.");
  }

  @Test
  void aTickIsWrittenAndNothingElseChanges() throws IOException {
    Job before = read("");
    RefitList ticked =
        before.upkeep().refit().tick("lubricant", new RefitTick(LocalDate.of(2026, 4, 11), "AB"));
    RefitFile.write(file, ticked);
    Job after = JobReader.read(file);
    assertEquals(ticked, after.upkeep().refit());
    assertEquals(before.tests(), after.tests());
    assertTrue(Files.readString(file).replace(" :", ":").contains("\"notes\": \"kept\""));
    assertTrue(Files.exists(folder.resolve("car.job.json~")));
    RefitFile.write(file, ticked.untick("lubricant"));
    assertEquals(RefitList.shipped(), JobReader.read(file).upkeep().refit());
  }

  @Test
  void writingGivesBackWhatWasRead() throws IOException {
    Job job =
        read(
            """
            , "repairs": [ { "date": "2026-04-11", "part": "check-valve" } ],
              "pass": { "least_bar": 1.8 }, "refit": [ { "id": "own", "text": "Sweep." } ]
            """);
    ObjectNode root = (ObjectNode) new ObjectMapper().readTree(file.toFile());
    UpkeepWriter.put(root, job.upkeep());
    Files.writeString(file, root.toString());
    assertEquals(job.upkeep(), JobReader.read(file).upkeep());
    UpkeepWriter.put(root, read("").upkeep());
    assertFalse(root.has("pass") || root.has("refit") || root.has("repairs"));
  }
}
