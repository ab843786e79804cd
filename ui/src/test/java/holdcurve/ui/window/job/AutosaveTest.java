package holdcurve.ui.window.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever ends the window, the job is there at the next start. */
class AutosaveTest {
  /** Readings after which the process is killed. */
  private static final int TYPED = 40;

  @TempDir Path home;
  @TempDir Path folder;

  private static OpenJobModel model(Keeper keeper) {
    return model(keeper, Runnable::run);
  }

  private static OpenJobModel model(Keeper keeper, Executor background) {
    return new OpenJobModel(
        JobReader::readUnfinished, HandMadeRanking::new, background, Runnable::run, keeper);
  }

  private static void runAll(Queue<Runnable> later) {
    while (!later.isEmpty()) {
      later.remove().run();
    }
  }

  private static Job blank() {
    return JobEdits.blank("Blank", CircuitTemplates.circuit(CircuitTemplates.all().get(0)));
  }

  @Test
  void aKilledProcessLosesAtMostTheLastReading() throws IOException, InterruptedException {
    Path told = folder.resolve("told");
    Files.createFile(told);
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                TypingProcess.class.getName(),
                home.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .redirectOutput(told.toFile())
            .start();
    while (process.isAlive() && Files.readAllLines(told).size() < TYPED) {
      Thread.sleep(5);
    }
    process.destroyForcibly().waitFor();
    int readings = Files.readAllLines(told).size();
    assertTrue(readings >= TYPED, "the process told of " + readings + " readings only");
    List<Autosave.Kept> left = Autosave.left(home);
    assertEquals(1, left.size());
    assertTrue(left.get(0).readings() >= readings - 1, left.get(0).readings() + " of " + readings);
    List<Reading> kept = left.get(0).job().tests().get(0).log().readings();
    assertEquals(Reading.of(TYPED - 2, 2e5 - 10 * (TYPED - 2)), kept.get(TYPED - 2));
  }

  @Test
  void whatIsOpenElsewhereIsNotOffered() {
    try (Autosave open = Autosave.in(home)) {
      model(open).begin(blank(), null);
      assertTrue(Autosave.left(home).isEmpty());
    }
    assertEquals(1, Autosave.left(home).size());
  }

  @Test
  void keptWorkThatCannotBeReadStays() throws IOException {
    Path window = Files.createDirectories(home.resolve("window-old"));
    Path whole = Files.createDirectory(window.resolve("1"));
    Files.createFile(window.resolve("lock"));
    Files.writeString(window.resolve("readings"), "2\t30\t200000\tfalse\tfirst\n");
    Files.writeString(whole.resolve("whole"), "");
    Path job = Files.writeString(whole.resolve("kept.job.json"), "{ \"format\": \"cut");
    assertEquals(List.of(), Autosave.left(home));
    assertTrue(Files.exists(job), "kept work was thrown away unread");
  }

  @Test
  void everyChangeIsKeptAndBroughtBack() {
    Autosave autosave = Autosave.in(home);
    OpenJobModel model = model(autosave);
    model.begin(blank(), null);
    model.addReading(JobEdits.FIRST_TEST, Reading.of(0, 2e5));
    model.addReading(JobEdits.FIRST_TEST, Reading.of(30, 1.9e5));
    model.change("title", job -> JobEdits.titled(job, "Named"));
    model.addReading(JobEdits.FIRST_TEST, Reading.of(60, 1.8e5));
    model.undo();
    model.addReading(JobEdits.FIRST_TEST, Reading.of(61, 1.81e5));
    Job before = model.jobProperty().get();
    autosave.close();
    OpenJobModel next = model(Keeper.NONE);
    RescueModel rescue = new RescueModel(next, Autosave.left(home));
    assertEquals(3, rescue.found().get(0).readings());
    rescue.bringBack(rescue.found().get(0));
    assertEquals("Named", next.jobProperty().get().title());
    assertEquals(
        before.tests().get(0).log().readings(),
        next.jobProperty().get().tests().get(0).log().readings());
    assertTrue(next.unsaved().get());
    assertTrue(Autosave.left(home).isEmpty());
  }

  @Test
  void savedWorkLeavesNothingBehind() throws IOException {
    Path file = home.resolve("saved.job.json");
    Path kept = Files.createDirectory(home.resolve("kept"));
    Autosave autosave = Autosave.in(kept);
    OpenJobModel model = model(autosave);
    model.begin(blank(), null);
    model.addReading(JobEdits.FIRST_TEST, Reading.of(0, 2e5));
    model.saveAs(file);
    assertFalse(model.unsaved().get());
    assertEquals(file, model.fileProperty().get());
    autosave.close();
    try (Stream<Path> left = Files.list(kept)) {
      assertEquals(0, left.count());
    }
    assertEquals(1, JobReader.readUnfinished(file).tests().get(0).log().readings().size());
  }

  @Test
  void savingIsFinishedBeforeTheWindowGoes() throws IOException {
    Path file = home.resolve("saved.job.json");
    Path kept = Files.createDirectory(home.resolve("kept"));
    Queue<Runnable> later = new ArrayDeque<>();
    Autosave autosave = Autosave.in(kept);
    OpenJobModel model = model(autosave, later::add);
    model.begin(blank(), null);
    model.addReading(JobEdits.FIRST_TEST, Reading.of(0, 2e5));
    model.saveAs(file);
    model.close(autosave::close);
    runAll(later);
    assertTrue(Files.exists(file));
    try (Stream<Path> left = Files.list(kept)) {
      assertEquals(0, left.count(), "what was saved would be offered at the next start");
    }
  }

  @Test
  void aReadingTakenWhileTheJobIsSavedIsKept() throws IOException {
    Path kept = Files.createDirectory(home.resolve("kept"));
    Queue<Runnable> later = new ArrayDeque<>();
    Autosave autosave = Autosave.in(kept);
    OpenJobModel model = model(autosave, later::add);
    model.begin(blank(), null);
    model.addReading(JobEdits.FIRST_TEST, Reading.of(0, 2e5));
    model.saveAs(home.resolve("saved.job.json"));
    model.addReading(JobEdits.FIRST_TEST, Reading.of(30, 1.9e5));
    runAll(later);
    assertTrue(model.unsaved().get());
    model.close(autosave::close);
    assertEquals(2, Autosave.left(kept).get(0).readings());
  }

  @Test
  void theFirstReadingAfterAJobWasOpenedIsKeptWithTheJob() {
    Autosave autosave = Autosave.in(home);
    OpenJobModel model = model(autosave);
    model.open(Jobs.TWO_HOLDS);
    Job opened = model.jobProperty().get();
    model.addReading(opened.tests().get(0).id(), Reading.of(1000, 1e5));
    autosave.close();
    int before = opened.tests().stream().mapToInt(test -> test.log().readings().size()).sum();
    assertEquals(before + 1, Autosave.left(home).get(0).readings());
  }

  @Test
  void aJobOnlyLookedAtLeavesNothingBehind() {
    Autosave autosave = Autosave.in(home);
    model(autosave).open(Jobs.TWO_HOLDS);
    autosave.close();
    assertTrue(Autosave.left(home).isEmpty());
  }

  @Test
  void changesAreTakenBackAndDoneAgain() {
    OpenJobModel model = model(Keeper.NONE);
    model.open(Jobs.TWO_HOLDS);
    Job opened = model.jobProperty().get();
    assertFalse(model.unsaved().get());
    model.change("title", job -> JobEdits.titled(job, "Other"));
    model.change("nothing", job -> job);
    assertEquals("title", model.undoNameProperty().get());
    assertTrue(model.unsaved().get());
    model.undo();
    assertEquals(opened, model.jobProperty().get());
    assertFalse(model.unsaved().get());
    assertEquals("title", model.redoNameProperty().get());
    model.redo();
    assertEquals("Other", model.jobProperty().get().title());
    model.undo();
    model.change("gauge", job -> JobEdits.withGauge(job, new GaugeSpec(6e5, 0.01, 1e3)));
    model.redo();
    assertEquals(opened.title(), model.jobProperty().get().title());
    assertEquals(opened, model.ranking().rankedProperty().get());
  }

  @Test
  void aJobWithoutReadingsIsNotRankedButSaysWhy() {
    OpenJobModel model = model(Keeper.NONE);
    model.begin(blank(), null);
    model.rank();
    assertNull(model.ranking().resultProperty().get());
    assertTrue(model.problemProperty().get().contains("three readings"));
  }
}
