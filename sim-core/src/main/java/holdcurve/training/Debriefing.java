package holdcurve.training;

import holdcurve.common.message.Message;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
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
  public Debrief of(TrainingSession session, StatedOdds answer, Progress progress) {
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
  private Set<String> right(TrainingSession session, Progress progress) {
    TrainingSession all = new TrainingSession(endless(session.exercise()), catalogue);
    session.exercise().steps().forEach(step -> all.take(step, all.even()));
    Ranking ranking = ranker.rank(all.job(all.taken().size()), seed, progress);
    String truth = session.car().truth();
    Set<String> right = new LinkedHashSet<>(Set.of(truth));
    for (SuspectGroup group : ranking.groups()) {
      List<String> ids = group.suspects().stream().map(PossibleAnswers::canonical).toList();
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

  private List<Debrief.Line> lines(TrainingSession session, Set<String> right, Progress progress) {
    List<Debrief.Line> lines = new ArrayList<>();
    StatedOdds before = session.even();
    for (int i = 0; i < session.taken().size(); i++) {
      TrainingSession.Taken taken = session.taken().get(i);
      Ranking ranking = ranker.rank(session.job(i + 1), seed, progress);
      StatedOdds now = evidence(ranking);
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

  private static StatedOdds evidence(Ranking ranking) {
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Suspect suspect : ranking.suspects()) {
      shares.merge(PossibleAnswers.canonical(suspect.id()), suspect.probability(), Double::sum);
    }
    return new StatedOdds(shares);
  }

  private static Message cameOf(TrainingSession.Taken taken) {
    return taken
        .hold()
        .map(Debriefing::fall)
        .orElseGet(() -> Message.joined(taken.found().stream().map(Finding::message).toList()));
  }

  private static Message fall(HoldTest hold) {
    List<Reading> readings = hold.log().hold();
    Reading last = readings.get(readings.size() - 1);
    return Message.of(
        "%s, after %.0f min %s",
        Message.pressure(readings.get(0).pressure()),
        last.time() / 60,
        Message.pressure(last.pressure()));
  }

  private List<Debrief.Contrast> contrast(TrainingSession session, String named) {
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
  private static PossibleAnswers.Suspicion suspicion(TrainingSession session, String id) {
    List<PossibleAnswers.Suspicion> parts =
        Arrays.stream(id.split("\\+"))
            .map(
                one ->
                    session.answers().stream()
                        .filter(s -> s.id().equals(one))
                        .findFirst()
                        .orElseThrow())
            .toList();
    return new PossibleAnswers.Suspicion(
        id,
        parts.stream().map(PossibleAnswers.Suspicion::words).collect(Collectors.joining(", and ")),
        parts.stream().map(PossibleAnswers.Suspicion::symptoms).collect(Collectors.joining(" ")),
        parts.stream().map(PossibleAnswers.Suspicion::repair).collect(Collectors.joining(" ")));
  }
}
