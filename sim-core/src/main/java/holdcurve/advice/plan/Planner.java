package holdcurve.advice.plan;

import holdcurve.common.work.Progress;
import holdcurve.inference.posterior.Posterior;
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
   * @param posterior what is believed so far, with {@value #DRAWS} draws a hypothesis or so
   * @param seed of the random numbers; the same seed gives the same answer
   * @throws CancellationException if {@code progress} says so
   */
  public static Plan plan(Posterior posterior, long seed, Progress progress) {
    OpenHypotheses futures = new OpenHypotheses(posterior);
    List<CandidateTest> all = Candidates.of(posterior.job(), futures.hypotheses());
    return plan(futures, all, seed, progress);
  }

  /** Holds alone, with every clamping there is. */
  public static Plan planHolds(Posterior posterior, long seed, Progress progress) {
    return plan(
        new OpenHypotheses(posterior), Candidates.holds(posterior.job().circuit()), seed, progress);
  }

  private static Plan plan(
      OpenHypotheses futures, List<CandidateTest> candidates, long seed, Progress progress) {
    Posterior posterior = futures.posterior();
    Separation separation = new Separation(posterior);
    List<PlannedTest> tests = new ArrayList<>();
    for (CandidateTest candidate : candidates) {
      if (progress.isCancelled()) {
        throw new CancellationException("the plan was cancelled");
      }
      progress.at((double) tests.size() / candidates.size(), candidate.procedure().name());
      tests.add(candidate.predicted(futures, separation, seed));
    }
    String next = posterior.ranking().diagnosis().next().procedure();
    tests.sort(
        Comparator.comparing((PlannedTest test) -> !test.procedure().id().equals(next))
            .thenComparing(Comparator.comparingDouble(PlannedTest::bitsPerMinute).reversed()));
    return new Plan(
        posterior.ranking().job(),
        seed,
        Information.entropy(futures.prior()),
        tests,
        BuildUpLog.notes(posterior.job(), posterior.ranking().verdict(), futures.hypotheses()));
  }
}
