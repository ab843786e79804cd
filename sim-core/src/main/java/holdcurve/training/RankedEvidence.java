package holdcurve.training;

import holdcurve.advice.plan.PlannedTest;
import holdcurve.advice.plan.Planner;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.hypothesis.Hypotheses;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The evidence as a ranking and a plan have it. */
public final class RankedEvidence implements EvidenceAssessor {
  /** Draws of each hypothesis: a third of a plan's, since only its order is told. */
  private static final int DRAWS = Planner.DRAWS / 3;

  private static final long SEED = 1;

  private final Ranker ranker;
  private final FaultCatalogue catalogue;

  public RankedEvidence(Ranker ranker, FaultCatalogue catalogue) {
    this.ranker = ranker;
    this.catalogue = catalogue;
  }

  @Override
  public Evidence after(TrainingSession session, int steps, Progress progress) {
    Job job = session.job(steps);
    if (job.tests().isEmpty() && job.findings().isEmpty()) {
      return prior(session);
    }
    Posterior posterior = ranker.believe(job, SEED, DRAWS, progress);
    Ranking ranking = posterior.ranking();
    return new Evidence(
        odds(ranking),
        named(ranking.suspects().get(0)),
        job.tests().isEmpty() ? List.of() : worth(session.exercise(), posterior, progress),
        ranking.verdict().kind() != Verdict.Kind.UNEXPLAINED);
  }

  /** A ranking needs a reading or a finding; before the first, the priors speak. */
  private Evidence prior(TrainingSession session) {
    List<Hypothesis> all =
        Hypotheses.of(
            session.exercise().circuit(),
            catalogue.showingInHold(),
            FaultPriors.shipped(),
            Map.of(),
            false,
            new ArrayList<>());
    Map<String, Double> odds = new LinkedHashMap<>();
    all.forEach(h -> odds.merge(PossibleAnswers.canonical(h.id()), h.priorWeight(), Double::sum));
    return new Evidence(new StatedOdds(odds), "", List.of(), true);
  }

  private static List<Evidence.Worth> worth(
      Exercise exercise, Posterior posterior, Progress progress) {
    List<Evidence.Worth> worth = new ArrayList<>();
    for (PlannedTest test : Planner.plan(posterior, SEED, progress).tests()) {
      exercise.steps().stream()
          .filter(step -> step.id().equals(test.procedure().id()))
          .map(step -> new Evidence.Worth(step, test.information().bits()))
          .forEach(worth::add);
    }
    return worth;
  }

  private static StatedOdds odds(Ranking ranking) {
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Suspect suspect : ranking.suspects()) {
      shares.merge(PossibleAnswers.canonical(suspect.id()), suspect.probability(), Double::sum);
    }
    return new StatedOdds(shares);
  }

  private static String named(Suspect suspect) {
    return suspect.name() + (suspect.where().isEmpty() ? "" : " (" + suspect.where() + ")");
  }
}
