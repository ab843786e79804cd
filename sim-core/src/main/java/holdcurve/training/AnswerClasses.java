package holdcurve.training;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.Observations;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Answers that no step of an exercise can tell apart, read off the network and off what each leaves
 * to be seen: such equivalent faults count as one answer.
 */
final class AnswerClasses {
  private final Map<String, String> first = new LinkedHashMap<>();
  private final Map<String, Hypothesis.Member> members = new LinkedHashMap<>();
  private final Identifiability alike;

  private record Seen(Hypothesis.Member member, Set<String> signs) {}

  private AnswerClasses(Identifiability alike) {
    this.alike = alike;
  }

  static AnswerClasses of(Exercise exercise, FaultCatalogue catalogue) {
    Circuit circuit = exercise.circuit();
    Identifiability alike = new Identifiability(everyHold(exercise));
    AnswerClasses classes = new AnswerClasses(alike);
    classes.first.put(Suspect.NONE, Suspect.NONE);
    List<Seen> heads = new ArrayList<>();
    for (LeakFault fault : catalogue.showingInHold().faults()) {
      for (Site site : FaultCatalogue.sites(fault, circuit)) {
        Seen one = new Seen(new Hypothesis.Member(fault, site), signs(exercise, fault, site));
        Seen head =
            heads.stream()
                .filter(
                    other ->
                        other.signs().equals(one.signs())
                            && alike.drainAlike(other.member(), one.member()))
                .findFirst()
                .orElse(one);
        heads.add(one);
        classes.members.put(one.member().id(), one.member());
        classes.first.put(one.member().id(), head.member().id());
      }
    }
    return classes;
  }

  private static Job everyHold(Exercise exercise) {
    List<HoldTest> tests = new ArrayList<>();
    for (Step step : exercise.steps()) {
      if (step instanceof Step.Hold hold) {
        GaugeLog nothing = new GaugeLog("none", List.of(), 0);
        tests.add(HoldTest.of(hold.id(), Set.copyOf(hold.clamped()), nothing));
      }
    }
    return new Job(
        exercise.title(), exercise.circuit(), exercise.gauge(), tests, Map.of(), List.of());
  }

  /** What the looks and counts of the exercise could show of a fault. */
  private static Set<String> signs(Exercise exercise, LeakFault fault, Site site) {
    Circuit circuit = exercise.circuit();
    double[] usual = FaultParameter.usual(fault.parameters());
    Observations.Source source =
        new Observations.Source(
            new CircuitState.Member(fault, site),
            fault.apply(Condition.sound(circuit), site, usual).leaks(),
            "");
    Observations observations = new Observations(circuit, List.of(source));
    Set<String> signs = new TreeSet<>();
    for (Step step : exercise.steps()) {
      if (step instanceof Step.LookAtJoints) {
        signs.addAll(observations.wet());
      } else if (step instanceof Step.LookIntoReferenceHose && observations.hasFuelInHose()) {
        signs.add(step.id());
      } else if (step instanceof Step.CountDrops count && observations.isDripping(count.part())) {
        signs.add(step.id());
      }
    }
    return signs;
  }

  /** The answer that stands for all that nothing tells from one, or from several joined by +. */
  String classOf(String id) {
    return PossibleAnswers.join(
        RepairChoice.faults(id).stream()
            .map(one -> first.getOrDefault(one, one))
            .distinct()
            .toList());
  }

  /** Whether no hold tells two answers apart; what is seen beside the gauge may. */
  boolean holdAlike(String a, String b) {
    return members.containsKey(a)
        && members.containsKey(b)
        && alike.drainAlike(members.get(a), members.get(b));
  }

  /** The classes of an answer's faults, one each. */
  Set<String> classesOf(String id) {
    return RepairChoice.faults(id).stream().map(this::classOf).collect(Collectors.toSet());
  }

  /** An answer, and all that nothing tells from it. */
  Set<String> with(String id) {
    Set<String> all = new LinkedHashSet<>(Set.of(id));
    first.keySet().stream().filter(one -> classOf(one).equals(classOf(id))).forEach(all::add);
    return all;
  }

  /**
   * Odds of single faults, equivalent ones together; two at once count half for each, since the
   * sliders have no place for both.
   */
  StatedOdds of(StatedOdds odds) {
    Map<String, Double> merged = new LinkedHashMap<>();
    new TreeSet<>(first.values()).forEach(one -> merged.put(one, 0.0));
    odds.shares()
        .forEach(
            (id, share) -> {
              List<String> faults = RepairChoice.faults(id);
              faults.forEach(one -> merged.merge(classOf(one), share / faults.size(), Double::sum));
            });
    return new StatedOdds(merged);
  }
}
