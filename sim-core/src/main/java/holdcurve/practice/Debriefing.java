package holdcurve.practice;

import holdcurve.fault.FaultCatalogue;
import holdcurve.finding.Finding;
import holdcurve.infer.Progress;
import holdcurve.infer.Ranker;
import holdcurve.infer.Ranking;
import holdcurve.infer.Suspect;
import holdcurve.infer.SuspectGroup;
import holdcurve.job.HoldTest;
import holdcurve.log.Reading;
import holdcurve.saying.Saying;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Lays what a learner thought beside what the same evidence supports. */
public final class Debriefing {
  private final Ranker ranker;
  private final FaultCatalogue catalogue;
  private final long seed;

  /**
   * @param seed of the rankings' random numbers
   */
  public Debriefing(Ranker ranker, FaultCatalogue catalogue, long seed) {
    this.ranker = ranker;
    this.catalogue = catalogue;
    this.seed = seed;
  }

  /**
   * @param answer the learner's last belief
   */
  public Debrief of(Session session, Belief answer, Progress progress) {
    String truth = session.car().truth();
    Set<String> right = right(session, progress);
    List<Debrief.Line> lines = lines(session, right, progress);
    String named = right.contains(answer.leading()) ? truth : answer.leading();
    double used = session.used() / session.exercise().minutes();
    return new Debrief(
        suspicion(session, truth),
        right,
        suspicion(session, named),
        lines,
        answer.of(right),
        Score.of(answer, right, session.even(), used),
        right.contains(named) ? List.of() : contrast(session, named));
  }

  /** The truth, and what every step of the exercise together can't tell from it. */
  private Set<String> right(Session session, Progress progress) {
    Session all = new Session(endless(session.exercise()), catalogue);
    session.exercise().steps().forEach(step -> all.take(step, all.even()));
    Ranking ranking = ranker.rank(all.job(all.taken().size()), seed, progress);
    String truth = session.car().truth();
    Set<String> right = new LinkedHashSet<>(Set.of(truth));
    for (SuspectGroup group : ranking.groups()) {
      List<String> ids = group.suspects().stream().map(Suspicions::canonical).toList();
      if (ids.contains(truth)) {
        right.addAll(ids);
      }
    }
    return right;
  }

  private static Exercise endless(Exercise e) {
    return new Exercise(
        e.title(), e.level(), e.story(), e.circuit(), e.gauge(), e.steps(), 1e9, e.secret());
  }

  private List<Debrief.Line> lines(Session session, Set<String> right, Progress progress) {
    List<Debrief.Line> lines = new ArrayList<>();
    Belief before = session.even();
    for (int i = 0; i < session.taken().size(); i++) {
      Session.Taken taken = session.taken().get(i);
      Ranking ranking = ranker.rank(session.job(i + 1), seed, progress);
      Belief now = evidence(ranking);
      lines.add(
          new Debrief.Line(
              taken.step(),
              cameOf(taken),
              taken.before().of(right),
              now.of(right),
              leading(ranking),
              now.gainedOver(before)));
      before = now;
    }
    return lines;
  }

  private static String leading(Ranking ranking) {
    Suspect first = ranking.suspects().get(0);
    return first.name() + (first.where().isEmpty() ? "" : " (" + first.where() + ")");
  }

  private static Belief evidence(Ranking ranking) {
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Suspect suspect : ranking.suspects()) {
      shares.merge(Suspicions.canonical(suspect.id()), suspect.probability(), Double::sum);
    }
    return new Belief(shares);
  }

  private static Saying cameOf(Session.Taken taken) {
    return taken
        .hold()
        .map(Debriefing::fall)
        .orElseGet(() -> Saying.joined(taken.found().stream().map(Finding::saying).toList()));
  }

  private static Saying fall(HoldTest hold) {
    List<Reading> readings = hold.log().hold();
    Reading last = readings.get(readings.size() - 1);
    return Saying.of(
        "%s, after %.0f min %s",
        Saying.pressure(readings.get(0).pressure()),
        last.time() / 60,
        Saying.pressure(last.pressure()));
  }

  private List<Debrief.Contrast> contrast(Session session, String named) {
    Exercise e = session.exercise();
    TrainingCar other =
        new TrainingCar(
            new Exercise(
                e.title(),
                e.level(),
                e.story(),
                e.circuit(),
                e.gauge(),
                e.steps(),
                e.minutes(),
                new Secret(faults(named), e.secret().seed())),
            catalogue);
    List<Debrief.Contrast> contrast = new ArrayList<>();
    for (int i = 0; i < session.taken().size(); i++) {
      if (session.taken().get(i).step() instanceof Step.Hold hold) {
        double[] end = {hold.watched() * 60};
        contrast.add(
            new Debrief.Contrast(
                hold, session.car().needle(hold, i, end)[0], other.needle(hold, i, end)[0]));
      }
    }
    return contrast;
  }

  private static List<HiddenFault> faults(String id) {
    return id.equals(Suspect.NONE)
        ? List.of()
        : Arrays.stream(id.split("\\+"))
            .map(one -> one.split("@", 2))
            .map(one -> new HiddenFault(one[0], one[1], Double.NaN))
            .toList();
  }

  /** An answer in words; for several faults at once, all of them. */
  private static Suspicions.Suspicion suspicion(Session session, String id) {
    List<Suspicions.Suspicion> parts =
        Arrays.stream(id.split("\\+"))
            .map(
                one ->
                    session.answers().stream()
                        .filter(s -> s.id().equals(one))
                        .findFirst()
                        .orElseThrow())
            .toList();
    return new Suspicions.Suspicion(
        id,
        parts.stream().map(Suspicions.Suspicion::words).collect(Collectors.joining(", and ")),
        parts.stream().map(Suspicions.Suspicion::symptoms).collect(Collectors.joining(" ")),
        parts.stream().map(Suspicions.Suspicion::repair).collect(Collectors.joining(" ")));
  }
}
