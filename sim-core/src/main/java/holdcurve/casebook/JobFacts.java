package holdcurve.casebook;

import holdcurve.common.input.InputException;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;

/**
 * What a job itself says of how far it is, without working anything out.
 *
 * @param held whether it has a hold that can be ranked
 * @param repaired whether a repair is noted
 * @param unproved whether no hold followed the last repair yet
 */
public record JobFacts(boolean held, boolean repaired, boolean unproved) {
  /** Reads them off a job. */
  public static JobFacts of(Job job) {
    return new JobFacts(
        RankableTests.last(job).isPresent(), !job.upkeep().repairs().isEmpty(), isUnproved(job));
  }

  /** Where repairs and holds can't be put in order, a ranking says so. */
  private static boolean isUnproved(Job job) {
    try {
      return RankableTests.unproved(job).isPresent();
    } catch (InputException e) {
      return false;
    }
  }
}
