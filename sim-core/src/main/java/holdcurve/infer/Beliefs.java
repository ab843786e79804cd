package holdcurve.infer;

import holdcurve.job.Job;
import java.util.List;

/**
 * What is believed about a circuit after the tests of a job: the ranking, and draws that further
 * questions can be asked of.
 *
 * @param job the job
 * @param ranking what is shown to people
 * @param beliefs one a hypothesis, likeliest first; their probabilities add up to 1
 */
public record Beliefs(Job job, Ranking ranking, List<Belief> beliefs) {
  public Beliefs {
    beliefs = List.copyOf(beliefs);
  }

  /** Power at which the likelihood of the readings will count with one more test [-]. */
  public double powerWithOneMore() {
    return Coarsening.of(job, 1).power();
  }
}
