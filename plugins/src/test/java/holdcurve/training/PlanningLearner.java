package holdcurve.training;

import holdcurve.advice.plan.PlannedTest;
import holdcurve.advice.plan.Planner;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.ranking.RankingService;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Does what the plan says, and believes what the ranking says. */
final class PlanningLearner {
  /** A test that tells less isn't worth the walk round the car [bit]. */
  private static final double WORTHWHILE = 0.03;

  private final RankingService rankings;

  PlanningLearner(FaultCatalogue catalogue) {
    this.rankings = new RankingService(catalogue);
  }

  /** Works at a car until nothing is left that would tell more. */
  StatedOdds solve(TrainingSession session) {
    Step first = Steps.byId(session.exercise().steps(), "hold");
    session.take(first, session.even());
    while (true) {
      Posterior posterior =
          rankings.believe(session.job(session.taken().size()), 1, Planner.DRAWS, Progress.NONE);
      StatedOdds belief = belief(posterior);
      Optional<Step> next = next(session, posterior);
      if (next.isEmpty()) {
        return belief;
      }
      session.take(next.get(), belief);
    }
  }

  private static StatedOdds belief(Posterior posterior) {
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Suspect suspect : posterior.ranking().suspects()) {
      shares.merge(PossibleAnswers.canonical(suspect.id()), suspect.probability(), Double::sum);
    }
    return new StatedOdds(shares);
  }

  private static Optional<Step> next(TrainingSession session, Posterior posterior) {
    return Planner.plan(posterior, 1, Progress.NONE).tests().stream()
        .filter(test -> test.information().bits() > WORTHWHILE)
        .map(PlannedTest::procedure)
        .flatMap(
            procedure ->
                session.exercise().steps().stream()
                    .filter(step -> step.id().equals(procedure.id())))
        .filter(session::hasTimeFor)
        .filter(step -> session.taken().stream().noneMatch(t -> t.step().equals(step)))
        .findFirst();
  }
}
