package holdcurve.practice;

import holdcurve.fault.FaultCatalogue;
import holdcurve.infer.Beliefs;
import holdcurve.infer.Progress;
import holdcurve.infer.RankingService;
import holdcurve.infer.Suspect;
import holdcurve.plan.PlannedTest;
import holdcurve.plan.Planner;
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
  Belief solve(Session session) {
    Step first = Steps.byId(session.exercise().steps(), "hold");
    session.take(first, session.even());
    while (true) {
      Beliefs beliefs =
          rankings.believe(session.job(session.taken().size()), 1, Planner.DRAWS, Progress.NONE);
      Belief belief = belief(beliefs);
      Optional<Step> next = next(session, beliefs);
      if (next.isEmpty()) {
        return belief;
      }
      session.take(next.get(), belief);
    }
  }

  private static Belief belief(Beliefs beliefs) {
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Suspect suspect : beliefs.ranking().suspects()) {
      shares.merge(Suspicions.canonical(suspect.id()), suspect.probability(), Double::sum);
    }
    return new Belief(shares);
  }

  private static Optional<Step> next(Session session, Beliefs beliefs) {
    return Planner.plan(beliefs, 1, Progress.NONE).tests().stream()
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
