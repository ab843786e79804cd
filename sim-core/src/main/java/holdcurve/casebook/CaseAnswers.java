package holdcurve.casebook;

import holdcurve.advice.check.RepairCheckService;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import java.util.List;
import java.util.Optional;

/**
 * Works out what a list shows of a job: a check where a hold followed the repair, else a ranking.
 *
 * @param usual ranks a car that was never here
 */
public record CaseAnswers(RankingService usual, FaultCatalogue catalogue) {
  /** The same random numbers as in the window, so the same answer. */
  private static final long SEED = 1;

  /**
   * @param earlier jobs of the same car, oldest first
   * @throws holdcurve.common.input.InputException if the job's readings can't be used
   * @throws NoAnswerException if it has none, or nothing can be told from them
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  public KnownAnswer of(Job job, List<Job> earlier, Progress progress) {
    Job readable = RankableTests.of(job);
    if (readable.tests().isEmpty()) {
      throw new NoAnswerException(job.title() + ": no hold has enough readings.");
    }
    RankingService service = SameCar.ranking(usual, earlier, readable, progress);
    JobFacts facts = JobFacts.of(readable);
    return facts.repaired() && !facts.unproved()
        ? KnownAnswer.of(
            new RepairCheckService(service, catalogue)
                .check(readable, Optional.empty(), SEED, progress))
        : KnownAnswer.of(service.verdictOnly().rank(CurrentTests.of(readable), SEED, progress));
  }
}
