package holdcurve.inference.posterior;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.noise.Coarsening;
import holdcurve.record.job.Job;
import java.util.List;

/**
 * What is believed about a circuit after the tests of a job: the ranking, and draws that further
 * questions can be asked of.
 *
 * @param job the job
 * @param ranking what is shown to people
 * @param posterior one a hypothesis, likeliest first; their probabilities add up to 1
 */
public record Posterior(Job job, Ranking ranking, List<HypothesisPosterior> posterior) {
  public Posterior {
    posterior = List.copyOf(posterior);
  }

  /** Power at which the likelihood of the readings will count with one more test [-]. */
  public double powerWithOneMore() {
    return Coarsening.of(job, 1).power();
  }
}
