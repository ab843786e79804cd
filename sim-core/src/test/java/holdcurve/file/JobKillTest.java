package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job with circuit and logs, its writing broken off at every step. */
class JobKillTest {
  private static final List<Reading> YESTERDAY =
      List.of(Reading.of(0, 2.5e5), Reading.of(30, 2.25e5), Reading.of(60, 2.125e5));

  /** One of yesterday's was typed wrong, and one came. */
  private static final List<Reading> TODAY =
      List.of(
          Reading.of(0, 2.5e5),
          Reading.of(30, 2.375e5),
          Reading.of(60, 2.125e5),
          Reading.of(90, 2.0e5));

  private static final List<Reading> SECOND =
      List.of(Reading.of(0, 1.75e5), Reading.of(60, 2.0e5), Reading.of(120, 1.5e5));

  @TempDir private Path folder;

  private static Job before() {
    Job job = JobReader.read(HardFiles.FOLDER.resolve("job/good.job.json"));
    return job.withFindings(List.of()).withTests(List.of(test("first", YESTERDAY)));
  }

  private static Job after() {
    return before().withTests(List.of(test("first", TODAY), test("second", SECOND)));
  }

  private static HoldTest test(String id, List<Reading> readings) {
    return HoldTest.of(id, Set.of(), new GaugeLog(id, readings, 0));
  }

  /** A fresh folder with yesterday's job. */
  private Path standing(int step) throws IOException {
    Path file = Files.createDirectory(folder.resolve("step-" + step)).resolve("car.job.json");
    JobWriter.write(file, before());
    return file;
  }

  @Test
  void aKillAtAnyStepLosesNoReading() throws IOException {
    int steps = 0;
    for (boolean broken = true; broken; steps++) {
      Path file = standing(steps);
      BreakingDisk disk =
          new BreakingDisk(
              steps,
              true,
              what -> {
                throw new BreakingDisk.Killed();
              });
      try {
        JobWriter.write(file, after(), disk);
      } catch (BreakingDisk.Killed killed) {
        assertTrue(disk.isBroken());
      }
      broken = disk.isBroken();
      readableAndComplete(file);
    }
    assertEquals(
        List.of(TODAY, SECOND), logs(folder.resolve("step-" + (steps - 1) + "/car.job.json")));
    assertTrue(steps > 15, steps + " steps");
  }

  @Test
  void aFullDiskLosesNoReading() throws IOException {
    for (int step = 0; step < 15; step++) {
      Path file = standing(step);
      BreakingDisk full =
          new BreakingDisk(
              step,
              true,
              what -> {
                if (!what.equals("delete")) {
                  throw new FileSystemException("x", null, "No space left on device");
                }
              });
      InputException said =
          assertThrows(InputException.class, () -> JobWriter.write(file, after(), full));
      assertTrue(said.getMessage().contains("can't be written (No space left on device)"));
      readableAndComplete(file);
    }
  }

  /**
   * The job opens, its tests are yesterday's or today's, and yesterday's readings are somewhere.
   */
  private static void readableAndComplete(Path file) throws IOException {
    List<List<Reading>> read = logs(file);
    assertTrue(Set.of(YESTERDAY, TODAY).contains(read.get(0)), read.toString());
    assertTrue(read.size() == 1 || read.get(1).equals(SECOND), read.toString());
    Set<Reading> found = new HashSet<>(read.get(0));
    Path backup = file.resolveSibling("car-first.csv~");
    if (Files.exists(backup)) {
      Path copy = Files.copy(backup, file.resolveSibling("copy.csv"));
      found.addAll(holdcurve.record.log.GaugeLogReader.read(copy).log().readings());
    }
    assertTrue(found.containsAll(YESTERDAY), found.toString());
  }

  private static List<List<Reading>> logs(Path file) {
    List<List<Reading>> logs = new ArrayList<>();
    JobReader.read(file).tests().forEach(test -> logs.add(test.log().readings()));
    return logs;
  }

  @Test
  void nothingIsLeftBesideFilesAndBackups() throws IOException {
    Path file = standing(0);
    JobWriter.write(file, after());
    try (Stream<Path> all = Files.list(file.getParent())) {
      assertEquals(
          List.of(
              "car-first.csv",
              "car-first.csv~",
              "car-second.csv",
              "car.circuit.json",
              "car.job.json",
              "car.job.json~"),
          all.map(path -> path.getFileName().toString()).sorted().toList());
    }
  }
}
