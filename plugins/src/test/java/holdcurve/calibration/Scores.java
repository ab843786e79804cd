package holdcurve.calibration;

import holdcurve.infer.Interval;
import holdcurve.infer.Ranking;
import holdcurve.infer.Suspect;
import holdcurve.infer.SuspectGroup;
import holdcurve.infer.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Counts how often rankings are right, and as often as they say. */
final class Scores {
  private static final int BINS = 10;

  /** A probability, and whether it came true. */
  private record Claim(double probability, boolean right) {}

  private final List<Claim> claims = new ArrayList<>();
  private int cases;
  private int groupFirst;
  private int sound;
  private int accused;
  private int intervals;
  private int covered;
  private int unexplained;
  private double logScore;

  void add(GeneratedCase truth, Ranking ranking) {
    cases++;
    unexplained += ranking.verdict().kind() == Verdict.Kind.UNEXPLAINED ? 1 : 0;
    String right = truth.fault().orElse(Suspect.NONE);
    double inRightGroup = 0;
    for (Cluster cluster : clusters(ranking)) {
      boolean hit = cluster.ids().stream().anyMatch(id -> is(id, right));
      claims.add(new Claim(cluster.probability(), hit));
      inRightGroup += hit ? cluster.probability() : 0;
    }
    logScore += Math.log(Math.max(inRightGroup, 1e-6));
    Cluster first = clusters(ranking).get(0);
    groupFirst += first.ids().stream().anyMatch(id -> is(id, right)) ? 1 : 0;
    if (truth.fault().isEmpty()) {
      sound++;
      accused += ranking.suspect(Suspect.NONE).probability() < 0.2 ? 1 : 0;
    }
    size(ranking, right)
        .ifPresent(
            interval -> {
              intervals++;
              covered += interval.contains(truth.size()) ? 1 : 0;
            });
  }

  private static boolean is(String hypothesis, String fault) {
    return hypothesis.equals(fault)
        || hypothesis.startsWith(fault + "@") && !hypothesis.contains("+");
  }

  private static Optional<Interval> size(Ranking ranking, String fault) {
    return ranking.suspects().stream()
        .filter(s -> is(s.id(), fault))
        .findFirst()
        .flatMap(Suspect::size)
        .map(size -> size.value());
  }

  private record Cluster(List<String> ids, double probability) {}

  private static List<Cluster> clusters(Ranking ranking) {
    List<Cluster> clusters = new ArrayList<>();
    List<String> grouped = new ArrayList<>();
    for (SuspectGroup group : ranking.groups()) {
      clusters.add(new Cluster(group.suspects(), group.probability()));
      grouped.addAll(group.suspects());
    }
    for (Suspect suspect : ranking.suspects()) {
      if (!grouped.contains(suspect.id())) {
        clusters.add(new Cluster(List.of(suspect.id()), suspect.probability()));
      }
    }
    clusters.sort((a, b) -> Double.compare(b.probability(), a.probability()));
    return clusters;
  }

  double rightFirst() {
    return (double) groupFirst / cases;
  }

  double falseAccusations() {
    return sound == 0 ? 0 : (double) accused / sound;
  }

  double coverage() {
    return (double) covered / intervals;
  }

  /**
   * Expected calibration error over ten bins of stated probability, claims weighted equally [-].
   */
  double calibrationError() {
    double error = 0;
    int counted = 0;
    for (int bin = 0; bin < BINS; bin++) {
      double low = (double) bin / BINS;
      List<Claim> in =
          claims.stream()
              .filter(c -> c.probability() > 0.01)
              .filter(
                  c -> Math.min((int) (c.probability() * BINS), BINS - 1) == Math.round(low * BINS))
              .toList();
      if (!in.isEmpty()) {
        double said = in.stream().mapToDouble(Claim::probability).average().orElse(0);
        double came = in.stream().mapToDouble(c -> c.right() ? 1 : 0).average().orElse(0);
        error += in.size() * Math.abs(said - came);
        counted += in.size();
      }
    }
    return error / counted;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d cases: right group first %.1f %%, calibration error %.3f, size covered %.1f %% of %d,"
            + " sound accused %.1f %% of %d, called unexplained %d, log score %.3f",
        cases,
        100 * rightFirst(),
        calibrationError(),
        100 * coverage(),
        intervals,
        100 * falseAccusations(),
        sound,
        unexplained,
        logScore / cases);
  }
}
