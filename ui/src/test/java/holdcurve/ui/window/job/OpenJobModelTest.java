package holdcurve.ui.window.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.file.JobReader;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.job.Job;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class OpenJobModelTest {
  /** Work of a thread, done when the test says so. */
  private static final class Later {
    private final Queue<Runnable> waiting = new ArrayDeque<>();

    void add(Runnable work) {
      waiting.add(work);
    }

    void doNext() {
      waiting.remove().run();
    }

    void doAll() {
      while (!waiting.isEmpty()) {
        doNext();
      }
    }
  }

  private final Later background = new Later();
  private final Later screen = new Later();
  private Ranker ranker = new HandMadeRanking();
  private final OpenJobModel model =
      new OpenJobModel(
          JobReader::read,
          () -> (job, seed, progress) -> ranker.rank(job, seed, progress),
          background::add,
          screen::add);

  /** Failures made on purpose need no stack trace on the screen; held so that the level lasts. */
  private static final Logger LOG = Logger.getLogger(RankingModel.class.getName());

  @BeforeAll
  static void keepQuiet() {
    LOG.setLevel(Level.OFF);
  }

  private void finish() {
    while (!background.waiting.isEmpty() || !screen.waiting.isEmpty()) {
      background.doAll();
      screen.doAll();
    }
  }

  private void open(Path path) {
    model.open(path);
    finish();
  }

  @Test
  void readsAndRanksInTheBackground() {
    model.open(Jobs.TWO_HOLDS);
    assertEquals(0, screen.waiting.size());
    background.doNext();
    assertNull(model.jobProperty().get());
    screen.doNext();
    assertEquals(2, model.jobProperty().get().tests().size());
    assertTrue(model.ranking().busyProperty().get());
    assertNull(model.ranking().resultProperty().get());
    finish();
    assertFalse(model.ranking().busyProperty().get());
    assertEquals(
        HandMadeRanking.IDS.size(), model.ranking().resultProperty().get().suspects().size());
  }

  @Test
  void aBadFileLeavesTheOpenJobAndSaysWhy() {
    open(Jobs.TWO_HOLDS);
    Job before = model.jobProperty().get();
    open(Jobs.UNKNOWN_ENTRY);
    assertSame(before, model.jobProperty().get());
    assertNotNull(model.ranking().resultProperty().get());
    assertEquals(Jobs.TWO_HOLDS, model.fileProperty().get());
    assertTrue(model.problemProperty().get().contains("tets"), model.problemProperty().get());
    model.dismissProblem();
    assertEquals("", model.problemProperty().get());
  }

  @Test
  void aGoodFileClearsTheProblem() {
    open(Jobs.UNKNOWN_ENTRY);
    open(Jobs.SHORT_HOLD);
    assertEquals("", model.problemProperty().get());
  }

  @Test
  void theLatestOpeningWins() {
    model.open(Jobs.TWO_HOLDS);
    model.open(Jobs.SHORT_HOLD);
    finish();
    assertEquals(Jobs.SHORT_HOLD, model.fileProperty().get());
    assertEquals("Short hold (invented)", model.ranking().resultProperty().get().job());
  }

  @Test
  void aNewJobStopsTheRankingOfTheOld() {
    boolean[] cancelled = new boolean[1];
    ranker =
        (job, seed, progress) -> {
          model.open(Jobs.SHORT_HOLD);
          background.doNext();
          screen.doAll();
          cancelled[0] = progress.isCancelled();
          ranker = new HandMadeRanking();
          throw new CancellationException();
        };
    open(Jobs.TWO_HOLDS);
    assertTrue(cancelled[0]);
    assertEquals("Short hold (invented)", model.ranking().resultProperty().get().job());
  }

  @Test
  void cancellingKeepsTheReadings() {
    model.open(Jobs.TWO_HOLDS);
    background.doNext();
    screen.doNext();
    model.ranking().cancel();
    assertFalse(model.ranking().busyProperty().get());
    finish();
    assertNull(model.ranking().resultProperty().get());
    assertNotNull(model.jobProperty().get());
    assertEquals("", model.problemProperty().get());
  }

  @Test
  void reportsOfProgressDoNotPileUp() {
    ranker =
        (job, seed, progress) -> {
          for (int i = 1; i <= 1000; i++) {
            progress.at(i / 1000.0, "step " + i);
          }
          assertEquals(1, screen.waiting.size());
          screen.doNext();
          return HandMadeRanking.of(job);
        };
    open(Jobs.TWO_HOLDS);
    assertEquals(1, model.ranking().progressProperty().get());
    assertEquals("step 1000", model.ranking().stepProperty().get());
    assertNotNull(model.ranking().resultProperty().get());
  }

  @Test
  void aRankerThatFailsIsReportedOnce() {
    ranker =
        (job, seed, progress) -> {
          throw new IllegalStateException("no fault is known");
        };
    open(Jobs.TWO_HOLDS);
    assertEquals("The ranking broke off: no fault is known.", model.problemProperty().get());
    assertFalse(model.ranking().busyProperty().get());
    assertNotNull(model.jobProperty().get());
  }

  @Test
  void reloadReadsTheSameFile() {
    model.reload();
    assertTrue(background.waiting.isEmpty());
    open(Jobs.SHORT_HOLD);
    Job before = model.jobProperty().get();
    model.reload();
    finish();
    assertEquals(before.title(), model.jobProperty().get().title());
    assertFalse(before == model.jobProperty().get());
  }

  @Test
  void onlyOneJobFileCanBeDropped() {
    model.openDropped(List.of(Jobs.TWO_HOLDS, Jobs.SHORT_HOLD));
    assertTrue(model.problemProperty().get().contains("one job file"));
    model.openDropped(List.of(Path.of("log.csv")));
    assertTrue(model.problemProperty().get().contains("one job file"));
    model.openDropped(List.of(Jobs.SHORT_HOLD));
    finish();
    assertEquals(Jobs.SHORT_HOLD, model.fileProperty().get());
  }

  @Test
  void theSeedIsAlwaysTheSame() {
    ranker =
        (job, seed, progress) -> {
          assertEquals(1, seed);
          assertFalse(progress == Progress.NONE);
          return HandMadeRanking.of(job);
        };
    open(Jobs.SHORT_HOLD);
    assertEquals("", model.problemProperty().get());
  }
}
