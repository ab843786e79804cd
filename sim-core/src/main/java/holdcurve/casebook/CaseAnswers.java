package holdcurve.casebook;

import holdcurve.advice.check.RepairChecker;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.work.Progress;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import java.util.Optional;

/**
 * Works out what a list shows of a job: a check where a hold followed the repair, else a ranking.
 */
public record CaseAnswers(Ranker ranker, RepairChecker checker) {
  /** The same random numbers as in the window, so the same answer. */
  private static final long SEED = 1;

  /**
   * @throws holdcurve.common.input.InputException if the job's readings can't be used
   * @throws NoAnswerException if it has none, or nothing can be told from them
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  public KnownAnswer of(Job job, Progress progress) {
    Job readable = RankableTests.of(job);
    if (readable.tests().isEmpty()) {
      throw new NoAnswerException(job.title() + ": no hold has enough readings.");
    }
    JobFacts facts = JobFacts.of(readable);
    return facts.repaired() && !facts.unproved()
        ? KnownAnswer.of(checker.check(readable, Optional.empty(), SEED, progress))
        : KnownAnswer.of(ranker.rank(CurrentTests.of(readable), SEED, progress));
  }
}
