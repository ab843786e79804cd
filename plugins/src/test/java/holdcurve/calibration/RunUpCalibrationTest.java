package holdcurve.calibration;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.calibration.blind.RunUpCases;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Filmed run-ups of cars whose physics are not the program's: what is wrong stands first, alone or
 * in its group. {@code -Pcalibrate} takes forty of a kind.
 */
class RunUpCalibrationTest {
  private static final int CASES = Integer.getInteger("holdcurve.runup.cases", 4);
  private static final long FIRST_SEED = Long.getLong("holdcurve.runup.seed", 7000);

  @TempDir Path folder;

  static List<String> kinds() {
    return RunUpCases.kinds();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void standsFirst(String kind) throws InterruptedException, ExecutionException {
    ExecutorService workers =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<Future<Boolean>> running = new ArrayList<>();
      for (int i = 0; i < CASES; i++) {
        long seed = FIRST_SEED + i;
        running.add(workers.submit(() -> rightFirst(kind, seed)));
      }
      int right = 0;
      for (Future<Boolean> one : running) {
        right += one.get() ? 1 : 0;
      }
      System.out.println(kind + ": " + right + " of " + CASES);
      int enough = (int) Math.floor(0.8 * CASES);
      assertTrue(right >= enough, kind + ": " + right + " of " + CASES);
    } finally {
      workers.shutdownNow();
    }
  }

  /** Shutting low and being set low are one to whoever renews it. */
  private static boolean isOfRegulator(List<String> faults) {
    return faults.stream()
        .anyMatch(
            id -> id.startsWith("regulator-set-low") || id.startsWith("regulator-low-reseat"));
  }

  private boolean rightFirst(String kind, long seed) {
    GeneratedCase truth = new RunUpCases(folder).make(kind, seed);
    RankingService ranker = new RankingService(FaultCatalogue.load(), FaultPriors.shipped(), 1);
    long begun = System.nanoTime();
    Ranking ranking = ranker.rank(truth.job(), 1, Progress.NONE);
    CaseOutcome outcome = CaseOutcome.of(truth, ranking);
    System.out.printf("%s (%.1f s)%n", outcome.line(), (System.nanoTime() - begun) / 1e9);
    return outcome.rightFirst()
        || isOfRegulator(truth.faults())
            && outcome.first().suspects().stream().anyMatch(id -> isOfRegulator(List.of(id)));
  }
}
