package holdcurve.inference.explain;

import holdcurve.common.message.Message;
import holdcurve.common.work.Workers;
import holdcurve.inference.answer.Reason;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.finding.FindingLikelihoods;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.inference.posterior.Profile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Says why: a suspect and its rival, each at its best, and what every part of the data and every
 * unknown makes of the difference, as far as it is believed. The weights of all parts add up to the
 * odds of the two.
 */
public final class Reasoning {
  /** A reason of less than this is left out: 1.6 times likelier [nat]. */
  private static final double WORTH_SAYING = 0.5;

  /** Suspects of less probability need no reasons, but for "no fault" [-]. */
  private static final double LISTED = 0.02;

  private static final int MOST_SUSPECTS = 3;

  /** A difference of roughness that is worth saying [-]. */
  private static final double ROUGHER = 0.5;

  /** Where a log is cut in parts, beside its middle [s]. */
  private static final double BEGINNING = 60;

  private final JobModel data;
  private final List<EvaluatedHypothesis> ordered;
  private final Map<String, Double> probability;
  private final List<SuspectGroup> groups;
  private final List<FindingLikelihoods.Said> findings;
  private final Map<EvaluatedHypothesis, Profile> profiles = new IdentityHashMap<>();

  /**
   * @param ordered explanations, likeliest first
   */
  public Reasoning(
      JobModel data,
      List<EvaluatedHypothesis> ordered,
      Map<String, Double> probability,
      List<SuspectGroup> groups) {
    this.data = data;
    this.ordered = ordered;
    this.probability = probability;
    this.groups = groups;
    this.findings = FindingLikelihoods.of(data.job());
  }

  /** The reasons of those that lead and of "no fault". */
  public List<Reasons> reasons(Workers workers) {
    Map<EvaluatedHypothesis, EvaluatedHypothesis> rivals = rivals();
    Set<EvaluatedHypothesis> asked = new LinkedHashSet<>(rivals.keySet());
    asked.addAll(rivals.values());
    workers
        .each(List.copyOf(asked), j -> j.hypothesis().name(), this::found, 1, 1)
        .forEach(found -> found.forEach(profile -> profiles.put(profile.evaluated(), profile)));
    List<Reasons> all = new ArrayList<>();
    rivals.forEach((suspect, rival) -> add(suspect, rival, all));
    return all;
  }

  /** None where the model fails. */
  private Optional<List<Profile>> found(EvaluatedHypothesis evaluated) {
    return Optional.of(Profile.of(data, evaluated).stream().toList());
  }

  /** Suspects in order, each with the likeliest explanation that is told apart from it. */
  private Map<EvaluatedHypothesis, EvaluatedHypothesis> rivals() {
    Set<EvaluatedHypothesis> suspects = new LinkedHashSet<>();
    ordered.stream()
        .limit(MOST_SUSPECTS)
        .filter(j -> probability.get(j.hypothesis().id()) >= LISTED)
        .forEach(suspects::add);
    ordered.stream().filter(j -> j.hypothesis().members().isEmpty()).forEach(suspects::add);
    Map<EvaluatedHypothesis, EvaluatedHypothesis> rivals = new LinkedHashMap<>();
    for (EvaluatedHypothesis suspect : suspects) {
      ordered.stream()
          .filter(other -> other != suspect && !together(suspect, other))
          .filter(other -> !sharesMember(suspect, other))
          .findFirst()
          .ifPresent(rival -> rivals.put(suspect, rival));
    }
    return rivals;
  }

  private static boolean sharesMember(EvaluatedHypothesis a, EvaluatedHypothesis b) {
    return a.hypothesis().members().stream().anyMatch(b.hypothesis().members()::contains);
  }

  private boolean together(EvaluatedHypothesis a, EvaluatedHypothesis b) {
    return groups.stream()
        .anyMatch(
            g ->
                g.suspects().contains(a.hypothesis().id())
                    && g.suspects().contains(b.hypothesis().id()));
  }

  private void add(EvaluatedHypothesis suspect, EvaluatedHypothesis rival, List<Reasons> all) {
    List<Reason> reasons = between(suspect, rival);
    reasons.removeIf(reason -> Math.abs(reason.weight()) < WORTH_SAYING);
    reasons.sort(Comparator.comparingDouble((Reason r) -> -Math.abs(r.weight())));
    all.add(new Reasons(suspect.hypothesis().id(), rival.hypothesis().id(), reasons));
  }

  /** Each is asked for with several rivals, and costs a simulation; null where that fails. */
  private Profile profile(EvaluatedHypothesis evaluated) {
    if (!profiles.containsKey(evaluated)) {
      profiles.put(evaluated, Profile.of(data, evaluated).orElse(null));
    }
    return profiles.get(evaluated);
  }

  /** All parts of the odds of two explanations, great and small; none where one fails. */
  List<Reason> between(EvaluatedHypothesis suspect, EvaluatedHypothesis rival) {
    Profile one = profile(suspect);
    Profile other = profile(rival);
    List<Reason> reasons = new ArrayList<>();
    if (one != null && other != null) {
      addReadings(one, other, reasons);
      addFindings(one, other, reasons);
      addNeeds(one, other, reasons);
      addRest(one, other, reasons);
    }
    return reasons;
  }

  private void addReadings(Profile one, Profile other, List<Reason> reasons) {
    for (int test = 0; test < data.series().size(); test++) {
      int row = one.starts().get(test);
      double[] time = data.series().get(test).time();
      int from = 0;
      for (double end : ends(time)) {
        int to = from;
        while (to < time.length && time[to] <= end) {
          to++;
        }
        if (to > from) {
          double weight = one.log(row + from, row + to) - other.log(row + from, row + to);
          double near = one.distance(test, from, to);
          double away = other.distance(test, from, to);
          Message what =
              Message.of(
                  "%s%s", part(test, time[from], time[to - 1]), distances(near, away, weight));
          reasons.add(new Reason(what, weight));
        }
        from = to;
      }
    }
  }

  /** Ends of the parts of a log: its first minute, up to its middle, the rest. */
  private static double[] ends(double[] time) {
    double last = time[time.length - 1];
    return new double[] {Math.min(BEGINNING, last / 3), last / 2, last};
  }

  private String part(int test, double from, double to) {
    return String.format(
        Locale.ROOT,
        "'%s', %.1f to %.1f min: ",
        data.job().tests().get(test).id(),
        from / 60,
        to / 60);
  }

  private static Message distances(double one, double other, double weight) {
    if (weight > 0 == one < other && Math.abs(one - other) > 300) {
      return Message.of(
          "readings lie %s from its curve, %s from the other's",
          Message.difference(one), Message.difference(other));
    }
    return Message.plain(
        weight > 0
            ? "its curve is closer to the readings in shape"
            : "the other's curve is closer to the readings in shape");
  }

  private void addFindings(Profile one, Profile other, List<Reason> reasons) {
    int row = data.residualCount();
    for (FindingLikelihoods.Said said : findings) {
      int next = row + said.evidence().rows();
      reasons.add(new Reason(found(said), one.log(row, next) - other.log(row, next)));
      row = next;
    }
    if (row < data.residualCount() + data.sideCount()) {
      int end = data.residualCount() + data.sideCount();
      reasons.add(
          new Reason(
              "readings before the pump stop, building up and running",
              one.log(row, end) - other.log(row, end)));
    }
  }

  /** The first finding, and how many more go with it. */
  private static Message found(FindingLikelihoods.Said said) {
    int more = said.findings().size() - 1;
    Message first = said.findings().get(0).message();
    return more == 0
        ? Message.of("found: %s", first)
        : Message.of("found: %s, and %d more of the kind", first, more);
  }

  private void addNeeds(Profile one, Profile other, List<Reason> reasons) {
    Map<String, Profile.Need> mine = one.needs();
    Map<String, Profile.Need> others = other.needs();
    Set<String> keys = new LinkedHashSet<>(mine.keySet());
    keys.addAll(others.keySet());
    for (String key : keys) {
      double weight = log(mine, key) - log(others, key);
      Message words =
          weight < 0
              ? Message.of("it needs %s", words(mine, key))
              : Message.of("the other needs %s", words(others, key));
      reasons.add(new Reason(words, weight));
    }
  }

  private static double log(Map<String, Profile.Need> needs, String key) {
    return needs.containsKey(key) ? needs.get(key).log() : 0;
  }

  private static Message words(Map<String, Profile.Need> needs, String key) {
    return needs.containsKey(key) ? needs.get(key).words() : Message.plain(key);
  }

  private void addRest(Profile one, Profile other, List<Reason> reasons) {
    double room = one.room() - other.room();
    double rougher = one.roughness() - other.roughness();
    String mine = "it fits only with rougher readings";
    String others = "the other fits only with rougher readings";
    String finer = "fewer sizes of it give these readings";
    String freer = "more sizes of it give these readings";
    String what = room < 0 ? rougher > ROUGHER ? mine : finer : rougher < -ROUGHER ? others : freer;
    reasons.add(new Reason(what, room));
    double prior = one.logPrior() - other.logPrior();
    reasons.add(
        new Reason(
            prior < 0 ? "it is the rarer of the two" : "it is the commoner of the two", prior));
  }
}
