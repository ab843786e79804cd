package holdcurve.calibration;

import holdcurve.common.number.Interval;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.answer.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One generated case with what the ranking made of it.
 *
 * @param claims every group of suspects, likeliest first, pairs grouped like their members
 * @param size stated size of the true leak; absent without one
 */
record CaseOutcome(
    String name,
    GeneratedCase truth,
    Ranking ranking,
    List<Claim> claims,
    Optional<Interval> size) {
  /**
   * @param suspects ids of its members
   * @param right whether the truth is among them; two leaks from one group are one to the gauge
   */
  record Claim(List<String> suspects, double probability, boolean right) {}

  static CaseOutcome of(GeneratedCase truth, Ranking ranking) {
    String name = truth.file().getParent().getFileName().toString();
    return new CaseOutcome(name, truth, ranking, claims(truth, ranking), size(truth, ranking));
  }

  private static List<Claim> claims(GeneratedCase truth, Ranking ranking) {
    Map<String, String> heads = new HashMap<>();
    for (SuspectGroup group : ranking.groups()) {
      group.suspects().forEach(id -> heads.put(id, group.suspects().get(0)));
    }
    Map<String, List<Suspect>> clusters =
        ranking.suspects().stream()
            .collect(Collectors.groupingBy(suspect -> key(suspect.id(), heads)));
    List<Claim> claims = new ArrayList<>();
    for (List<Suspect> cluster : clusters.values()) {
      claims.add(
          new Claim(
              cluster.stream().map(Suspect::id).toList(),
              cluster.stream().mapToDouble(Suspect::probability).sum(),
              holds(cluster, sorted(truth.faults()))));
    }
    claims.sort(Comparator.comparingDouble(Claim::probability).reversed());
    return claims;
  }

  private static boolean holds(List<Suspect> cluster, List<String> truth) {
    List<List<String>> named = cluster.stream().map(suspect -> faults(suspect.id())).toList();
    return named.contains(truth)
        || truth.size() > 1 && truth.stream().allMatch(fault -> named.contains(List.of(fault)));
  }

  private static String key(String id, Map<String, String> heads) {
    return Arrays.stream(id.split("\\+"))
        .map(member -> heads.getOrDefault(member, member))
        .sorted()
        .collect(Collectors.joining("+"));
  }

  /** Fault ids in a hypothesis id, sorted. */
  private static List<String> faults(String id) {
    return id.equals(Suspect.NONE)
        ? List.of()
        : Arrays.stream(id.split("\\+")).map(m -> m.substring(0, m.indexOf('@'))).sorted().toList();
  }

  private static List<String> sorted(List<String> ids) {
    return ids.stream().sorted().toList();
  }

  private static Optional<Interval> size(GeneratedCase truth, Ranking ranking) {
    return ranking.suspects().stream()
        .filter(s -> truth.faults().size() == 1 && faults(s.id()).equals(truth.faults()))
        .findFirst()
        .flatMap(Suspect::leak);
  }

  Claim first() {
    return claims.get(0);
  }

  /** Whether the first group holds the truth; of two faults, one will do. */
  boolean rightFirst() {
    return first().right()
        || truth.faults().size() > 1
            && first().suspects().stream()
                .anyMatch(id -> truth.faults().containsAll(faults(id)) && !faults(id).isEmpty());
  }

  double probabilityOfTruth() {
    return claims.stream().filter(Claim::right).mapToDouble(Claim::probability).sum();
  }

  /** A sound circuit of which it is said that something leaks, wherever it may be. */
  boolean accused() {
    return truth.isSound()
        && (ranking.verdict().kind() == Verdict.Kind.LEAK
            || ranking.verdict().kind() == Verdict.Kind.FAULT
            || ranking.suspect(Suspect.NONE).probability() <= 0.1);
  }

  boolean unexplained() {
    return ranking.verdict().kind() == Verdict.Kind.UNEXPLAINED;
  }

  /** One line of a table. */
  String line() {
    double perMinute = 6e7;
    String interval =
        size.map(
                i ->
                    String.format(
                        Locale.ROOT,
                        "%.3f,%.3f,%.3f",
                        i.low() * perMinute,
                        i.middle() * perMinute,
                        i.high() * perMinute))
            .orElse(",,");
    return String.format(
        Locale.ROOT,
        "%s,%s,%.3f,%s,%s,%.3f,%.3f,%.3f,%s,%s",
        name,
        truth.isSound() ? Suspect.NONE : String.join("+", truth.faults()),
        truth.size() < 1 ? truth.size() * perMinute : truth.size() / 1e5,
        rightFirst() ? "right" : "wrong",
        first().suspects().get(0),
        first().probability(),
        probabilityOfTruth(),
        ranking.suspect(Suspect.NONE).probability(),
        interval,
        ranking.verdict().kind());
  }

  static String heading() {
    return "case,truth,size,first_group,leading,its_probability,probability_of_truth,"
        + "probability_of_none,low,middle,high,verdict";
  }
}
