package holdcurve.plan;

import holdcurve.infer.Beliefs;
import holdcurve.infer.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;

/** Finds the test that tells most for the time it takes. */
public final class Planner {
  /** Draws of each hypothesis that a plan wants to be asked for. */
  public static final int DRAWS = 60;

  private Planner() {}

  /**
   * @param beliefs what is believed so far, with {@value #DRAWS} draws a hypothesis or so
   * @param seed of the random numbers; the same seed gives the same answer
   * @throws CancellationException if {@code progress} says so
   */
  public static Plan plan(Beliefs beliefs, long seed, Progress progress) {
    Futures futures = new Futures(beliefs);
    List<CandidateTest> all = Candidates.of(beliefs.job(), futures.hypotheses());
    return plan(futures, all, seed, progress);
  }

  /** Holds alone, with every clamping there is. */
  public static Plan planHolds(Beliefs beliefs, long seed, Progress progress) {
    return plan(new Futures(beliefs), Candidates.holds(beliefs.job().circuit()), seed, progress);
  }

  private static Plan plan(
      Futures futures, List<CandidateTest> candidates, long seed, Progress progress) {
    Beliefs beliefs = futures.beliefs();
    Separation separation = new Separation(beliefs);
    List<PlannedTest> tests = new ArrayList<>();
    for (CandidateTest candidate : candidates) {
      if (progress.isCancelled()) {
        throw new CancellationException("the plan was cancelled");
      }
      progress.at((double) tests.size() / candidates.size(), candidate.procedure().name());
      tests.add(candidate.foreseen(futures, separation, seed));
    }
    String next = beliefs.ranking().diagnosis().next().procedure();
    tests.sort(
        Comparator.comparing((PlannedTest test) -> !test.procedure().id().equals(next))
            .thenComparing(Comparator.comparingDouble(PlannedTest::bitsPerMinute).reversed()));
    return new Plan(
        beliefs.ranking().job(),
        seed,
        Information.entropy(futures.prior()),
        tests,
        BuildUpLog.notes(beliefs.job(), beliefs.ranking().verdict(), futures.hypotheses()));
  }
}
