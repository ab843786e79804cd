package holdcurve.policy;

import holdcurve.advice.plan.PlannedTest;
import holdcurve.advice.plan.Planner;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One case with a known fault and all its hold tests, from which an order takes one after the other
 * until the right group is believed with {@link #CERTAIN}.
 */
final class FollowedOrder {
  static final double CERTAIN = 0.9;

  /** The cases have one fault, and both orders may know it. */
  private static final FaultPriors ONE_FAULT = FaultPriors.shipped().ofSingleFaults();

  private final Job full;
  private final String fault;
  private final Map<List<Integer>, Posterior> known = new HashMap<>();

  /**
   * @param full the case with every test that can be asked for; the first is without clamps
   * @param fault id of the fault that was put in
   */
  FollowedOrder(Job full, String fault) {
    this.full = full;
    this.fault = fault;
  }

  /** Tests until certain; one more than there are if never. */
  int fixed() {
    List<Integer> done = new ArrayList<>(List.of(0));
    while (!certain(done)) {
      if (done.size() == full.tests().size()) {
        return done.size() + 1;
      }
      done.add(done.size());
    }
    return done.size();
  }

  /** Likewise, with the best of the tests that are left, as a plan has it. */
  int planned() {
    List<Integer> done = new ArrayList<>(List.of(0));
    while (!certain(done)) {
      Optional<Integer> next = next(done);
      if (next.isEmpty()) {
        return full.tests().size() + 1;
      }
      done.add(next.get());
    }
    return done.size();
  }

  private Optional<Integer> next(List<Integer> done) {
    for (PlannedTest test : Planner.planHolds(posterior(done), 1, Progress.NONE).tests()) {
      int place = place(test.procedure().clamped());
      if (place >= 0 && !done.contains(place)) {
        return Optional.of(place);
      }
    }
    return Optional.empty();
  }

  private int place(Set<String> clamped) {
    for (int i = 0; i < full.tests().size(); i++) {
      if (full.tests().get(i).clamped().equals(clamped)) {
        return i;
      }
    }
    return -1;
  }

  private boolean certain(List<Integer> done) {
    List<HypothesisPosterior> posterior = posterior(done).posterior();
    Identifiability alike = new Identifiability(full);
    List<Hypothesis.Member> guilty =
        posterior.stream()
            .map(HypothesisPosterior::hypothesis)
            .filter(h -> h.members().size() == 1)
            .map(h -> h.members().get(0))
            .filter(m -> m.fault().id().equals(fault))
            .toList();
    return posterior.stream()
            .filter(
                b ->
                    b.hypothesis().members().stream()
                        .anyMatch(m -> guilty.stream().anyMatch(t -> alike.drainAlike(m, t))))
            .mapToDouble(HypothesisPosterior::probability)
            .sum()
        >= CERTAIN;
  }

  private Posterior posterior(List<Integer> done) {
    return known.computeIfAbsent(done.stream().sorted().toList(), this::believe);
  }

  private Posterior believe(List<Integer> done) {
    List<HoldTest> tests = done.stream().map(i -> full.tests().get(i)).toList();
    return new RankingService(FaultCatalogue.load(), ONE_FAULT, 1)
        .believe(full.withTests(tests), 1, 40, Progress.NONE);
  }
}
