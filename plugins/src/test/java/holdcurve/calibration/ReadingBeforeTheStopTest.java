package holdcurve.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.ranking.RankingService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a mechanic reads while the pump runs, taken for what it is. Invented readings. */
class ReadingBeforeTheStopTest {
  private static final Path SCENARIOS =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios");

  @TempDir Path folder;

  private static Ranking rank(Path job) {
    return new RankingService(FaultCatalogue.load()).rank(JobReader.read(job), 1, Progress.NONE);
  }

  private static double blocked(Ranking ranking) {
    return ranking.suspects().stream()
        .filter(suspect -> suspect.id().contains("blocked-return"))
        .mapToDouble(Suspect::probability)
        .sum();
  }

  private Ranking onOutline(double set, List<String> lines) throws IOException {
    Files.write(folder.resolve("film.csv"), lines);
    Files.writeString(
        folder.resolve("car.circuit.json"),
        "{ \"format\": \"holdcurve-circuit/1\", \"title\": \"invented\", \"outline\": "
            + "{ \"cylinders\": 4, \"pipe_length_m\": 3.5, \"set_bar\": "
            + set
            + " } }");
    Path job = folder.resolve("film.job.json");
    Files.writeString(
        job,
        "{ \"format\": \"holdcurve-job/1\", \"title\": \"invented\", \"circuit\": \"car.circuit.json\","
            + " \"gauge\": { \"range_bar\": 4, \"class_percent\": 1.6, \"resolution_bar\": 0.02 },"
            + " \"tests\": [ { \"id\": \"film\", \"clamped\": [], \"log\": \"film.csv\" } ] }");
    return rank(job);
  }

  /** 2.4 bar at a regulator of 2.0 is an ordinary rise, in one test as in two. */
  @ParameterizedTest
  @ValueSource(strings = {"sound-after-rebuild", "check-valve"})
  void oneReadingBeforeTheStopChangesNothing(String scenario) throws IOException {
    Path without = SCENARIOS.resolve(scenario + ".job.json");
    Files.createDirectories(folder.resolve("logs"));
    Files.createDirectories(folder.resolve("circuits"));
    String circuit = "circuits/six-cylinder-return-line.circuit.json";
    Files.copy(SCENARIOS.resolve(circuit), folder.resolve(circuit));
    Files.copy(without, folder.resolve("with.job.json"));
    try (var logs = Files.list(SCENARIOS.resolve("logs"))) {
      for (Path log : logs.toList()) {
        String text = Files.readString(log);
        Files.writeString(
            folder.resolve("logs").resolve(log.getFileName().toString()),
            text.replaceFirst("(?m)^0,", "-2,2.40\n0,"));
      }
    }
    Ranking before = rank(without);
    Ranking after = rank(folder.resolve("with.job.json"));
    assertTrue(blocked(after) < 0.05, () -> "blocked return " + blocked(after));
    String first = before.suspects().get(0).id();
    assertEquals(first, after.suspects().get(0).id());
    assertEquals(before.suspect(first).probability(), after.suspect(first).probability(), 0.1);
  }

  @Test
  void aRegulatorThatRisesWithItsFlowIsSound() throws IOException {
    Ranking ranking =
        onOutline(
            2.0,
            List.of(
                "time_s,pressure_bar",
                "-12,2.28",
                "-8,2.28",
                "-4,2.28",
                "-1,2.28",
                "0,2.28",
                "2,2.00",
                "10,1.98",
                "60,1.96",
                "120,1.94",
                "240,1.90",
                "360,1.86",
                "480,1.82",
                "600,1.80"));
    assertTrue(ranking.suspect(Suspect.NONE).probability() > 0.7, ranking.suspects().toString());
    assertTrue(blocked(ranking) < 0.05, ranking.suspects().toString());
  }

  @Test
  void aPumpThatNeverReachesWhatIsSetIsNotSound() throws IOException {
    Ranking ranking =
        onOutline(
            2.5,
            List.of(
                "time_s,pressure_bar",
                "-14,2.02",
                "-10,2.02",
                "-6,2.02",
                "-2,2.02",
                "0,2.02",
                "10,2.00",
                "60,1.98",
                "120,1.96",
                "240,1.94",
                "420,1.92",
                "600,1.90"));
    String first = ranking.suspects().get(0).id();
    assertTrue(
        first.startsWith("weak-pump")
            || first.startsWith("clogged-filter")
            || first.startsWith("regulator-"),
        first);
    double sound = ranking.suspect(Suspect.NONE).probability();
    assertTrue(sound < 0.1, () -> "sound " + sound);
  }
}
