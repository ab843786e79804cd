package holdcurve.inference.decision;

import holdcurve.common.caution.Caution;
import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
import holdcurve.inference.answer.NextStep;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.JointLook;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which test to do next: the cheap look before the clamp, the clamp before the spanner. Of clamps,
 * the one that leaves the least uncertainty among groups of suspects, if each group shows itself
 * (greedy group testing).
 */
public final class NextTest {
  /** A clamp must take away this much uncertainty to be worth a hold: assumed [nat]. */
  private static final double WORTH_A_HOLD = 0.15;

  /** Suspects below this probability are left out of account [-]. */
  private static final double OPEN = 0.01;

  private final Job job;
  private final Identifiability alike;
  private final List<EvaluatedHypothesis> open;
  private final List<Double> probability;

  /**
   * @param singles hypotheses of one fault, likeliest first
   * @param probability of each [-]
   */
  public NextTest(
      Job job, Identifiability alike, List<EvaluatedHypothesis> singles, List<Double> probability) {
    this.job = job;
    this.alike = alike;
    this.open = new ArrayList<>();
    this.probability = new ArrayList<>();
    for (int i = 0; i < singles.size(); i++) {
      if (probability.get(i) >= OPEN) {
        open.add(singles.get(i));
        this.probability.add(probability.get(i));
      }
    }
  }

  public NextStep step() {
    if (job.findings().stream().noneMatch(JointLook.class::isInstance)) {
      return look();
    }
    return clamp().or(this::drops).orElseGet(NextTest::longer);
  }

  static NextStep look() {
    return NextStep.test(
        "look-at-joints",
        Message.plain(
            "Wipe every joint dry and prime. Look at them all with a cold lamp, for two minutes."),
        Caution.PETROL,
        Caution.BRIDGED_PUMP,
        Caution.COLD_LAMP,
        Caution.DRY_FIRST);
  }

  private static NextStep longer() {
    return NextStep.test(
        "hold-longer",
        Message.plain("Hold again for half an hour, and write down the fuel temperature."),
        Caution.PETROL,
        Caution.BRIDGED_PUMP);
  }

  /** The clamping that divides the suspects best; empty where none is worth a hold. */
  private Optional<NextStep> clamp() {
    double before = uncertainty(Set.of());
    double least = before - WORTH_A_HOLD;
    Set<String> best = null;
    for (Set<String> hoses : clampings()) {
      double left = uncertainty(hoses);
      if (left < least) {
        least = left;
        best = hoses;
      }
    }
    return Optional.ofNullable(best).map(NextTest::clamped);
  }

  private static NextStep clamped(Set<String> hoses) {
    String names = hoses.stream().map(PartName::of).collect(Collectors.joining(" and the "));
    return NextStep.test(
        "clamp-" + String.join("+", hoses),
        Message.of("Clamp the %s after the pump has stopped, and hold again.", names),
        Caution.PETROL,
        Caution.BRIDGED_PUMP,
        Caution.CLAMPS,
        Caution.DEAD_HEAD);
  }

  /** Each clampable hose alone, then each two; not those that a test has clamped already. */
  private List<Set<String>> clampings() {
    Set<Set<String>> done = job.tests().stream().map(HoldTest::clamped).collect(Collectors.toSet());
    List<String> hoses = Hose.clampable(job.circuit());
    List<Set<String>> all = new ArrayList<>();
    for (int i = 0; i < hoses.size(); i++) {
      all.add(new LinkedHashSet<>(List.of(hoses.get(i))));
    }
    for (int i = 0; i < hoses.size(); i++) {
      for (int j = i + 1; j < hoses.size(); j++) {
        all.add(new LinkedHashSet<>(List.of(hoses.get(i), hoses.get(j))));
      }
    }
    all.removeIf(done::contains);
    return all;
  }

  /**
   * Uncertainty of which group of suspects it is, once a hold with these clamps has shown it [nat].
   * A hold tells groups apart by the fuel they drain, so what is left is that within each class of
   * suspects that drain alike then.
   */
  private double uncertainty(Set<String> clamped) {
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      left.add(i);
    }
    double sum = 0;
    while (!left.isEmpty()) {
      int head = left.get(0);
      List<Integer> like =
          left.stream().filter(i -> i == head || stillAlike(head, i, clamped)).toList();
      left.removeAll(like);
      double total = like.stream().mapToDouble(probability::get).sum();
      sum +=
          like.stream()
              .mapToDouble(i -> -probability.get(i) * Math.log(probability.get(i) / total))
              .sum();
    }
    return sum;
  }

  private boolean stillAlike(int a, int b, Set<String> clamped) {
    Hypothesis.Member one = open.get(a).hypothesis().members().get(0);
    Hypothesis.Member other = open.get(b).hypothesis().members().get(0);
    return alike.drainAlike(one, other)
        && (clamped.isEmpty() || alike.drainAlike(one, other, clamped));
  }

  /** Where an injector is suspected whose drops nobody counted. */
  private Optional<NextStep> drops() {
    for (EvaluatedHypothesis suspect : open) {
      for (String part : suspect.hypothesis().members().get(0).site().parts()) {
        boolean injector = job.circuit().part(part).kind() == Injector.KIND;
        boolean valve = job.circuit().part(part).kind() == ColdStartInjector.KIND;
        boolean alone = suspect.hypothesis().members().get(0).site().parts().size() == 1;
        if (alone && (injector || valve) && !isCounted(part)) {
          return Optional.of(counted(part, injector));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isCounted(String part) {
    return job.findings().stream()
        .anyMatch(found -> found instanceof DropCount count && count.part().equals(part));
  }

  private static NextStep counted(String part, boolean injectors) {
    String words =
        injectors
            ? "Lift the injectors in their holders, prime, and count the drops at each."
            : "Unscrew the cold-start injector over a jar, prime, and count its drops.";
    return NextStep.test(
        "lift-" + part,
        Message.plain(words),
        Caution.PETROL,
        Caution.RELIEVE,
        Caution.NOTHING_FIRES,
        Caution.INJECTORS_HELD,
        Caution.BRIDGED_PUMP);
  }
}
