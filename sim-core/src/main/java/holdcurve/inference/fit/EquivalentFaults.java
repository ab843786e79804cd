package holdcurve.inference.fit;

import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Hypotheses whose faults drain the same fuel the same way, one by one, fit at the same place, but
 * a search may miss it. This says who can show whom the way.
 */
public final class EquivalentFaults {
  /** A fit this far behind its equivalent's has missed the place, or its law fits worse [nat]. */
  private static final double BEHIND = 2;

  private final Identifiability alike;

  public EquivalentFaults(Identifiability alike) {
    this.alike = alike;
  }

  /**
   * The best fit among the equivalents of a hypothesis.
   *
   * @param fitted the equivalent
   * @param partners for each member of the hypothesis, its place among those of the equivalent
   */
  public record Leader(Fitted fitted, int[] partners) {}

  /** Of hypotheses that are equivalent one each: the likeliest beforehand, by id among equals. */
  public List<Hypothesis> leading(List<Hypothesis> all) {
    List<Hypothesis> leading = new ArrayList<>();
    all.stream()
        .sorted(
            Comparator.comparingDouble((Hypothesis h) -> -h.priorWeight())
                .thenComparing(Hypothesis::id))
        .filter(h -> leading.stream().noneMatch(other -> areLike(h, other)))
        .forEach(leading::add);
    return leading;
  }

  /** The first of some fitted hypotheses that is equivalent to this one. */
  public Optional<Leader> leader(Hypothesis hypothesis, List<Fitted> among) {
    return among.stream()
        .map(
            other ->
                partners(hypothesis, other.hypothesis())
                    .map(partners -> new Leader(other, partners)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Hypotheses that lie far behind an equivalent, each with the best of those. */
  public Map<Fitted, Leader> leaders(List<Fitted> all) {
    Map<Fitted, Leader> leaders = new IdentityHashMap<>();
    for (Fitted one : all) {
      List<Fitted> ahead =
          all.stream()
              .filter(other -> other.best().logEvidence() > one.best().logEvidence() + BEHIND)
              .sorted(Comparator.comparingDouble((Fitted f) -> -f.best().logEvidence()))
              .toList();
      leader(one.hypothesis(), ahead).ifPresent(leader -> leaders.put(one, leader));
    }
    return leaders;
  }

  /** Whether the members of two hypotheses pair up. */
  public boolean areLike(Hypothesis one, Hypothesis other) {
    return partners(one, other).isPresent();
  }

  private Optional<int[]> partners(Hypothesis one, Hypothesis other) {
    List<Hypothesis.Member> members = one.members();
    List<Hypothesis.Member> others = other.members();
    if (members.isEmpty() || members.size() != others.size()) {
      return Optional.empty();
    }
    List<Integer> free = new ArrayList<>();
    for (int i = 0; i < others.size(); i++) {
      free.add(i);
    }
    int[] partners = new int[members.size()];
    for (int i = 0; i < partners.length; i++) {
      Hypothesis.Member member = members.get(i);
      Optional<Integer> partner =
          free.stream().filter(k -> isLike(member, others.get(k))).findFirst();
      if (partner.isEmpty()) {
        return Optional.empty();
      }
      partners[i] = partner.get();
      free.remove(partner.get());
    }
    return Optional.of(partners);
  }

  private boolean isLike(Hypothesis.Member a, Hypothesis.Member b) {
    return a.id().equals(b.id()) || alike.drainAlike(a, b);
  }
}
