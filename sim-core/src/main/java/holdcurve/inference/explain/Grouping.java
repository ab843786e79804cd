package holdcurve.inference.explain;

import holdcurve.common.message.PartName;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the groups of suspects that the tests so far cannot tell apart, and says why. */
public final class Grouping {
  /**
   * Beyond this difference of believed log evidence the shape of the curve has told two suspects
   * apart: a hundred to one, since it rests on laws that leaks in the field only half obey [nat].
   */
  private static final double TOLD_APART = 4.6;

  /** Parts that are named of those a clamp leaves joined. */
  private static final int NAMED = 3;

  private final Identifiability alike;
  private final Map<String, Double> probability;
  private final boolean looked;

  /**
   * @param probability hypothesis id → probability [-]
   * @param looked whether anything was found out beside the gauge
   */
  public Grouping(Identifiability alike, Map<String, Double> probability, boolean looked) {
    this.looked = looked;
    this.alike = alike;
    this.probability = probability;
  }

  /**
   * @param singles hypotheses of one fault, likeliest first
   */
  public List<SuspectGroup> groups(List<EvaluatedHypothesis> singles) {
    List<List<EvaluatedHypothesis>> groups = new ArrayList<>();
    for (EvaluatedHypothesis one : singles) {
      groups.stream()
          .filter(group -> belongs(one, group.get(0)))
          .findFirst()
          .ifPresentOrElse(
              group -> group.add(one), () -> groups.add(new ArrayList<>(List.of(one))));
    }
    return groups.stream().filter(group -> group.size() > 1).map(this::group).toList();
  }

  private boolean belongs(EvaluatedHypothesis one, EvaluatedHypothesis head) {
    double apart = head.logEvidence() - one.logEvidence();
    return Math.abs(apart) < TOLD_APART
        && (alike.drainAlike(member(one), member(head))
            || alike.starveAlike(member(one), member(head)));
  }

  private SuspectGroup group(List<EvaluatedHypothesis> members) {
    double sum = members.stream().mapToDouble(m -> probability.get(m.hypothesis().id())).sum();
    List<String> ids = members.stream().map(m -> m.hypothesis().id()).toList();
    return new SuspectGroup(ids, sum, reason(members));
  }

  private String reason(List<EvaluatedHypothesis> members) {
    Hypothesis.Member first = member(members.get(0));
    if (alike.starveAlike(first, member(members.get(1)))) {
      return "The gauge stands behind both pump and filter, so both look alike. Measure what the"
          + " pump delivers ahead of the filter.";
    }
    if (alike.drained(first).isEmpty()) {
      return "The held pressure does not reach them, so no hold shows them. Look with the pump"
          + " running.";
    }
    List<String> said = new ArrayList<>();
    said.add("Without a clamp all empty the line that the gauge reads.");
    alike.clampings().stream()
        .filter(clamped -> !clamped.isEmpty())
        .forEach(clamped -> said.add(clamped(clamped, first)));
    String hoses =
        members.stream()
            .skip(1)
            .flatMap(m -> alike.dividingHoses(first, member(m)).stream())
            .distinct()
            .map(hose -> "the " + PartName.of(hose))
            .collect(Collectors.joining(" or "));
    if (!hoses.isEmpty()) {
      said.add("To separate them, clamp " + hoses + " and hold again.");
    } else if (looked) {
      said.add("No clamp can separate them, and what was found does not either.");
    } else {
      said.add("No clamp can separate them: look for wet joints or count drops.");
    }
    return String.join(" ", said);
  }

  /** What a clamp that was fitted left on the gauge's side. */
  private String clamped(Set<String> clamped, Hypothesis.Member member) {
    String hoses = PartName.all(clamped);
    String clamp = "With the " + hoses + " clamped, ";
    if (!alike.reachesGauge(member, clamped)) {
      return clamp + "none of them was joined to the gauge.";
    }
    List<String> joined = alike.joined(clamped);
    String named = PartName.all(joined.subList(0, Math.min(NAMED, joined.size())));
    return clamp
        + "all were still joined to the gauge"
        + (joined.isEmpty() ? "." : " by the " + named + ".");
  }

  private static Hypothesis.Member member(EvaluatedHypothesis evaluated) {
    return evaluated.hypothesis().members().get(0);
  }
}
