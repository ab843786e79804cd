package holdcurve.infer;

import holdcurve.job.Job;

/** Ranks the explanations of a job's readings. */
public interface Ranker {
  /**
   * @param seed of the random numbers; the same seed gives the same answer
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  Ranking rank(Job job, long seed, Progress progress);
}
