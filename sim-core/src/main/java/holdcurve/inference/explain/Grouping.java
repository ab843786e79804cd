package holdcurve.inference.explain;

import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds the groups of suspects that the tests so far cannot tell apart, and says why. */
public final class Grouping {
  /**
   * Beyond this difference of believed log evidence the shape of the curve has told two suspects
   * apart: a hundred to one, since it rests on laws that leaks in the field only half obey [nat].
   */
  private static final double TOLD_APART = 4.6;

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
    if (alike.starveAlike(member(members.get(0)), member(members.get(1)))) {
      return "Pump and filter starve the rail alike, and the gauge stands behind both; what the"
          + " pump delivers into a measuring cylinder ahead of the filter divides them.";
    }
    String fuel = String.join(", ", alike.drained(member(members.get(0))));
    if (fuel.isEmpty()) {
      return "The pressure that is held doesn't reach them, so no hold shows them; only a look with"
          + " the pump running divides them.";
    }
    String hoses =
        members.stream()
            .skip(1)
            .flatMap(m -> alike.dividingHoses(member(members.get(0)), member(m)).stream())
            .distinct()
            .map(hose -> "'" + hose + "'")
            .collect(Collectors.joining(" or "));
    String drains =
        "In every test so far they drain the same trapped fuel ("
            + fuel
            + "), so the gauge falls alike";
    String sofar = looked ? ", and what was found so far leaves them open" : "";
    return hoses.isEmpty()
        ? drains + sofar + "; no clamp divides them: only a look or a drop count does."
        : drains + sofar + "; a hold with " + hoses + " clamped would divide them.";
  }

  private static Hypothesis.Member member(EvaluatedHypothesis evaluated) {
    return evaluated.hypothesis().members().get(0);
  }
}
