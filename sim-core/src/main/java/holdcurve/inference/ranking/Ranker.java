package holdcurve.inference.ranking;

import holdcurve.common.work.Progress;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.posterior.Posterior;
import holdcurve.record.job.Job;
import java.util.List;

/** Ranks the explanations of a job's readings. */
public interface Ranker {
  /**
   * @param seed of the random numbers; the same seed gives the same answer
   * @throws holdcurve.common.input.InputException if the readings can't be used
   * @throws holdcurve.common.input.NoAnswerException if nothing can be told from them
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  Ranking rank(Job job, long seed, Progress progress);

  /**
   * Likewise, keeping what further questions can be asked of; a ranker that keeps nothing believes
   * in no hypothesis.
   *
   * @param draws possibilities kept of each hypothesis that matters
   */
  default Posterior believe(Job job, long seed, int draws, Progress progress) {
    return new Posterior(job, rank(job, seed, progress), List.of());
  }
}
