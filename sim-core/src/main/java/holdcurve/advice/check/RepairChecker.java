package holdcurve.advice.check;

import holdcurve.common.work.Progress;
import holdcurve.record.job.Job;
import java.util.Optional;

/** Checks a repair. */
public interface RepairChecker {
  /**
   * @param testId the hold test to check; empty for those after the last repair
   * @param seed of the random numbers; the same seed gives the same answer
   * @throws holdcurve.common.input.InputException if there is no such test, or tests and repairs
   *     can't be put in order
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  RepairCheck check(Job job, Optional<String> testId, long seed, Progress progress);
}
