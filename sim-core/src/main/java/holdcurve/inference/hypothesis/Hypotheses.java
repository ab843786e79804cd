package holdcurve.inference.hypothesis;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultFailure;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.physics.circuit.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Everything that is considered for one circuit. */
public final class Hypotheses {
  private record Candidate(Hypothesis.Member member, double odds) {}

  private final List<Candidate> candidates = new ArrayList<>();
  private final FaultPriors priors;
  private final boolean afterRepair;

  private Hypotheses(FaultPriors priors, boolean afterRepair) {
    this.priors = priors;
    this.afterRepair = afterRepair;
  }

  /**
   * No fault, each fault at each site, and each pair of faults of different kind at different
   * places.
   *
   * @param changed fault id → how many times likelier than usual
   * @param afterRepair whether the tests were done because something was repaired
   * @param problems receives a sentence for each plugin that fails when asked for its sites or a
   *     condition
   */
  public static List<Hypothesis> of(
      Circuit circuit,
      FaultCatalogue catalogue,
      FaultPriors priors,
      Map<String, Double> changed,
      boolean afterRepair,
      List<String> problems) {
    Hypotheses all = new Hypotheses(priors, afterRepair);
    for (LeakFault fault : catalogue.faults()) {
      all.addSites(fault, circuit, changed.getOrDefault(fault.id(), 1.0), problems);
    }
    return all.list();
  }

  private void addSites(LeakFault fault, Circuit circuit, double changed, List<String> problems) {
    List<Candidate> found = new ArrayList<>();
    try {
      List<Site> sites = fault.sites(circuit);
      double odds = priors.odds(fault.id(), fault.prevalence(), changed) / sites.size();
      for (Site site : sites) {
        if (odds > 0) {
          found.add(new Candidate(usable(new Hypothesis.Member(fault, site), circuit), odds));
        }
      }
      candidates.addAll(found);
    } catch (FaultFailure e) {
      problems.add(e.getMessage());
    }
  }

  /** A fault that fails at its usual size must not take a share of the prior. */
  private static Hypothesis.Member usable(Hypothesis.Member member, Circuit circuit) {
    member.leaks(circuit);
    return member;
  }

  private List<Hypothesis> list() {
    List<Hypothesis> list = new ArrayList<>();
    list.add(new Hypothesis(List.of(), priors.soundWeight(afterRepair)));
    candidates.forEach(c -> list.add(new Hypothesis(List.of(c.member()), c.odds())));
    if (priors.most() > 1) {
      addPairs(list);
    }
    double sum = list.stream().mapToDouble(Hypothesis::priorWeight).sum();
    return list.stream().map(h -> new Hypothesis(h.members(), h.priorWeight() / sum)).toList();
  }

  private void addPairs(List<Hypothesis> list) {
    for (int i = 0; i < candidates.size(); i++) {
      for (int j = i + 1; j < candidates.size(); j++) {
        Candidate a = candidates.get(i);
        Candidate b = candidates.get(j);
        if (!a.member().fault().id().equals(b.member().fault().id())) {
          list.add(new Hypothesis(List.of(a.member(), b.member()), a.odds() * b.odds()));
        }
      }
    }
  }
}
