package holdcurve.ui.window;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.job.Job;
import java.util.List;

/** An invented ranking that can be asked further: no fault, check valve, injectors, regulator. */
public final class BelievedRanking implements Ranker {
  private static final FaultCatalogue FAULTS = FaultCatalogue.load();

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    return HandMadeRanking.of(job);
  }

  @Override
  public Posterior believe(Job job, long seed, int draws, Progress progress) {
    return new Posterior(
        job,
        rank(job, seed, progress),
        List.of(
            belief(job, "check-valve-seat", 0.5),
            belief(job, "injector-tip", 0.3),
            belief(job, "regulator-seat", 0.15),
            new HypothesisPosterior(
                new Hypothesis(List.of(), 1),
                0.05,
                PosteriorDraw.before(job.circuit(), job.gauge(), 1, 30))));
  }

  private static HypothesisPosterior belief(Job job, String id, double probability) {
    LeakFault fault = FAULTS.byId(id).orElseThrow();
    Hypothesis hypothesis =
        new Hypothesis(List.of(new Hypothesis.Member(fault, fault.sites(job.circuit()).get(0))), 1);
    return new HypothesisPosterior(
        hypothesis,
        probability,
        PosteriorDraw.before(job.circuit(), job.gauge(), hypothesis, 1, 30));
  }
}
