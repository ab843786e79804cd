package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Findings in a job file, read, written and refused. */
class FindingFileTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  private static final String EVERY =
      """
      { "kind": "joint", "part": "feed-hose", "end": "rail", "seen": "wet", "test": "first" },
      { "kind": "joint", "part": "filter", "seen": "wet", "wiped": true },
      { "kind": "joint", "seen": "dry", "date": "2026-04-10" },
      { "kind": "drops", "part": "injectors", "number": 3, "drops": 4, "minutes": 5,
        "pressure_bar": 1.9 },
      { "kind": "drops", "part": "cold-start-injector", "drops": 0, "minutes": 5 },
      { "kind": "reference-hose", "fuel": false },
      { "kind": "draw-off", "drawn_mL": 1.2, "from_bar": 2, "to_bar": 1.6, "seconds": 8,
        "clamped": [ "feed-hose" ], "date": "2025-12-31" },
      { "kind": "drop-test", "part": "injectors", "low": [ "3" ], "stays_open": [ "5" ] }
      """;

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

  private Job read(String findings) throws IOException {
    Files.writeString(
        file,
        """
        { "format": "holdcurve-job/1", "title": "A job (invented)", "circuit": "car.circuit.json",
          "notes": "kept", "tests": [ { "id": "first", "log": "log.csv" } ], "findings": [
        """
            + findings
            + "] }\n");
    return JobReader.read(file);
  }

  @Test
  void everyKindIsRead() throws IOException {
    Moment first = new Moment(Optional.of("first"), OptionalDouble.empty());
    assertEquals(
        List.of(
            new JointLook(Optional.of("feed-hose"), Optional.of("rail"), true, first),
            JointLook.of("filter", true).afterWiping(),
            JointLook.allDry().on(LocalDate.of(2026, 4, 10)),
            new DropCount("injectors", OptionalInt.of(3), 4, 300, Moment.at(1.9e5)),
            DropCount.ofAll("cold-start-injector", 0, 300),
            new ReferenceHoseLook(false, Moment.PRIMED),
            new DrawOff(1.2e-6, 2e5, 1.6e5, 8, Set.of("feed-hose")).on(LocalDate.of(2025, 12, 31)),
            new DropTestResult(
                "injectors", List.of("3"), List.of(), List.of("5"), true, Optional.empty())),
        read(EVERY).findings());
  }

  @Test
  void partsAreNamedAsPeopleNameThem() {
    assertEquals("front hose wet", JointLook.of("front-hose", true).inWords());
    assertEquals(
        "front hose wet again after wiping",
        JointLook.of("front-hose", true).afterWiping().inWords());
    assertEquals("every joint dry after wiping", JointLook.allDry().afterWiping().inWords());
    assertEquals(
        "cold start injector: no drop in 5 min",
        DropCount.ofAll("cold-start-injector", 0, 300).inWords());
  }

  @Test
  void whatIsWrittenIsReadBack() throws IOException {
    Job job = read(EVERY);
    JobWriter.write(file, job);
    assertEquals(job.findings(), JobReader.read(file).findings());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ 'kind': 'smell' } | unknown kind of finding \"smell\"; use one of joint, drops,"
            + " reference-hose, draw-off and drop-test.",
        "{ 'kind': 'joint', 'seen': 'wet' } | 'part' is missing; name the part that was wet.",
        "{ 'kind': 'joint', 'part': 'rail-hose', 'seen': 'dry' } | there is no part 'rail-hose'",
        "{ 'kind': 'joint', 'part': 'feed-hose', 'seen': 'damp' } | found \"damp\"; write \"wet\""
            + " or \"dry\".",
        "{ 'kind': 'joint', 'part': 'feed-hose', 'end': 'tank', 'seen': 'dry' } | 'feed-hose' has"
            + " no end at 'tank'; write 'filter-outlet' or 'rail'.",
        "{ 'kind': 'drops', 'part': 'rail', 'drops': 2, 'minutes': 5 } | found \"rail\"; name the"
            + " injectors: injectors and cold-start-injector.",
        "{ 'kind': 'drops', 'part': 'injectors', 'number': 7, 'drops': 2, 'minutes': 5 } | 7 is out"
            + " of range; give a number from 1 to 6.",
        "{ 'kind': 'drops', 'part': 'injectors', 'drops': 2.5, 'minutes': 5 } | found 2.5; write a"
            + " whole number.",
        "{ 'kind': 'drops', 'part': 'injectors', 'drops': 2 } | 'minutes' is missing; write over"
            + " how many minutes.",
        "{ 'kind': 'reference-hose', 'fuel': 'no' } | found \"no\" where true or false belongs;"
            + " write true if there was fuel in it, else false.",
        "{ 'kind': 'draw-off', 'drawn_mL': 1, 'from_bar': 1.6, 'to_bar': 2 } | 2 bar is not below"
            + " the 1.6 bar before",
        "{ 'kind': 'joint', 'seen': 'dry', 'wiped': 'yes' } | found \"yes\" where true or false"
            + " belongs; write true if it was wiped dry and primed again before the look, else"
            + " false.",
        "{ 'kind': 'joint', 'seen': 'dry', 'test': 'second' } | there is no test 'second'; use one"
            + " of first.",
        "{ 'kind': 'joint', 'seen': 'dry', 'date': '10.4.2026' } | '10.4.2026' is no date; write"
            + " year, month and day as 2026-04-11."
      })
  void whatIsWrongIsSaidWithItsPlace(String finding, String sentence) {
    String json = finding.replace('\'', '"');
    String message = assertThrows(InputException.class, () -> read(json)).getMessage();
    assertTrue(message.contains("findings[0]") && message.contains(sentence), message);
  }
}
