package holdcurve.policy;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.calibration.GeneratedCase;
import holdcurve.calibration.blind.BlindCases;
import holdcurve.file.JobReader;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Does following the plan find the right group in fewer holds than a fixed order does? Cases with
 * one known fault from a simulator with other physics. The order: no clamp, feed, return, both. A
 * short run here; {@code -Ppolicy} makes it a hundred cases.
 */
class PlanAgainstFixedOrderTest {
  private static final int CASES = Integer.getInteger("holdcurve.policy.cases", 1);

  /** Below this chance decides. */
  private static final int FEW = 50;

  private static final long FIRST_SEED = Long.getLong("holdcurve.policy.seed", 60_000);

  @TempDir Path folder;

  /** Tests that each order took. */
  private record Taken(String fault, int planned, int fixed) {}

  @Test
  void thePlanTakesFewerTests() throws Exception {
    List<Taken> taken = new ArrayList<>();
    ExecutorService workers =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<Future<Taken>> running = new ArrayList<>();
      for (GeneratedCase one : cases()) {
        running.add(workers.submit(() -> follow(one)));
      }
      AtomicInteger done = new AtomicInteger();
      for (Future<Taken> one : running) {
        taken.add(one.get());
        System.out.println(done.incrementAndGet() + " " + one.get());
      }
    } finally {
      workers.shutdownNow();
    }
    double planned = median(taken.stream().map(Taken::planned).toList());
    double fixed = median(taken.stream().map(Taken::fixed).toList());
    System.out.printf(
        "Tests until 90 %% certain of the right group, %d cases: following the plan median %.1f, mean"
            + " %.2f; fixed order median %.1f, mean %.2f%n",
        taken.size(),
        planned,
        taken.stream().mapToInt(Taken::planned).average().orElseThrow(),
        fixed,
        taken.stream().mapToInt(Taken::fixed).average().orElseThrow());
    String said = "plan " + planned + ", fixed order " + fixed;
    assertTrue(CASES < FEW ? planned <= fixed + 1 : planned < fixed, said);
  }

  private List<GeneratedCase> cases() {
    BlindCases blind = new BlindCases(folder);
    List<GeneratedCase> cases = new ArrayList<>();
    for (long seed = FIRST_SEED; cases.size() < CASES; seed++) {
      GeneratedCase one = blind.make(seed, 4);
      if (one.faults().size() == 1) {
        cases.add(one);
      }
    }
    return cases;
  }

  private static Taken follow(GeneratedCase one) {
    Job job = JobReader.read(one.file());
    String fault = one.faults().get(0);
    FollowedOrder order = new FollowedOrder(job, fault);
    return new Taken(fault, order.planned(), order.fixed());
  }

  private static double median(List<Integer> values) {
    List<Integer> sorted = values.stream().sorted().toList();
    int n = sorted.size();
    return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2.0;
  }
}
