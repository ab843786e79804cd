package holdcurve.calibration;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.calibration.blind.BlindCases;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rankings of generated jobs whose physics are not the fitted model's: is the right suspect first,
 * and do the percentages come true? A short run here; {@code -Pcalibrate} makes it hundreds of
 * cases and leaves a line for each in {@code target/calibration-*.csv}.
 */
class CalibrationTest {
  private static final int CASES = Integer.getInteger("holdcurve.calibration.cases", 12);
  private static final long FIRST_SEED = Long.getLong("holdcurve.calibration.seed", 1000);

  @TempDir Path folder;

  private Scores score(int tests) {
    ExecutorService workers = Executors.newFixedThreadPool(threads());
    try {
      Path table = table(tests);
      List<Future<CaseOutcome>> running = new ArrayList<>();
      for (int i = 0; i < CASES; i++) {
        long seed = FIRST_SEED + i;
        running.add(workers.submit(() -> rank(seed, tests, table)));
      }
      List<CaseOutcome> outcomes = new ArrayList<>();
      for (Future<CaseOutcome> one : running) {
        outcomes.add(one.get());
      }
      Scores scores = new Scores(outcomes);
      System.out.println(tests + " tests a job, " + scores + "\n" + scores.table());
      return scores;
    } catch (InterruptedException | ExecutionException e) {
      throw new IllegalStateException(e);
    } finally {
      workers.shutdownNow();
    }
  }

  private static int threads() {
    return Runtime.getRuntime().availableProcessors();
  }

  private CaseOutcome rank(long seed, int tests, Path table) {
    GeneratedCase generated = new BlindCases(folder).make(seed, tests);
    RankingService ranker = new RankingService(FaultCatalogue.load(), FaultPriors.shipped(), 1);
    CaseOutcome outcome = CaseOutcome.of(generated, ranker.rank(generated.job(), 1, Progress.NONE));
    append(table, outcome.line());
    return outcome;
  }

  private static Path table(int tests) {
    try {
      Path target = Files.createDirectories(Path.of("target"));
      Path table = target.resolve("calibration-" + tests + ".csv");
      Files.writeString(table, CaseOutcome.heading() + "\n");
      return table;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static synchronized void append(Path table, String line) {
    try {
      Files.writeString(table, line + "\n", StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void fourTestsFindTheRightGroup() {
    Scores scores = score(4);
    assertTrue(scores.rightFirst() >= 0.75, scores.toString());
    assertTrue(scores.falseAccusations() <= 0.2, scores.toString());
  }

  @Test
  void oneTestIsModest() {
    Scores scores = score(1);
    assertTrue(scores.falseAccusations() <= 0.2, scores.toString());
  }
}
