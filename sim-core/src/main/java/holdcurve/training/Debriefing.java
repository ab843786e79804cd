package holdcurve.training;

import holdcurve.common.message.Message;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Suspect;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Lays what a learner thought beside what the same evidence supports. */
public final class Debriefing {
  /** Pieces in which curves are drawn. */
  private static final int PIECES = 40;

  /** Who gives each of two faults so much has named both: assumed [-]. */
  private static final double BOTH = 0.3;

  /** Odds against the truth's at which an answer is still open, as groups of a ranking [-]. */
  private static final double LEFT_OPEN = 0.01;

  private final EvidenceAssessor assessor;
  private final FaultCatalogue catalogue;

  public Debriefing(EvidenceAssessor assessor, FaultCatalogue catalogue) {
    this.assessor = assessor;
    this.catalogue = catalogue;
  }

  /**
   * One assessment a step, of which a session has {@value TrainingSession#MOST_STEPS} at most, and
   * one of all the exercise's steps.
   *
   * @param answer the learner's last belief
   */
  public Debrief of(TrainingSession session, StatedOdds answer, Progress progress) {
    AnswerClasses classes = AnswerClasses.of(session.exercise(), catalogue);
    String truth = session.car().truth();
    Set<String> right = new LinkedHashSet<>(classes.with(truth));
    right.addAll(leftOpen(session, classes, truth, progress));
    List<Evidence> known = known(session, progress);
    Evidence last = known.get(known.size() - 1);
    StatedOdds stated = classes.of(answer);
    String named = named(answer, stated, classes, truth, right);
    List<Debrief.Line> lines = lines(session, classes, right, known, named);
    List<Evidence.Worth> open =
        last.worth().stream()
            .filter(one -> session.hasTimeFor(one.step()))
            .filter(one -> one.bits() >= StepWorth.WORTHWHILE)
            .toList();
    StatedOdds supported = classes.of(last.odds());
    StatedOdds prior = classes.of(known.get(0).odds());
    double gained = supported.gainedOver(prior);
    double left = open.stream().mapToDouble(Evidence.Worth::bits).max().orElse(0);
    List<Score.Spent> spent =
        lines.stream()
            .map(line -> new Score.Spent(line.worth().value(), line.step().minutes()))
            .toList();
    return new Debrief(
        suspicion(session, truth),
        right,
        suspicion(session, named),
        lines,
        stated.of(classes.classesOf(truth)),
        supported.of(classes.classesOf(truth)),
        new Score(
            Score.odds(stated, supported, prior),
            Score.odds(supported, supported, prior),
            Score.tests(spent, gained, left),
            0),
        Optional.empty(),
        open.stream().map(Evidence.Worth::step).findFirst(),
        last.explained());
  }

  /**
   * Answers that no hold tells from the truth, and that what is seen in every step together leaves
   * open: a drip may be missed.
   */
  private Set<String> leftOpen(
      TrainingSession session, AnswerClasses classes, String truth, Progress progress) {
    if (truth.contains("+")) {
      return Set.of();
    }
    TrainingSession all = new TrainingSession(endless(session.exercise()), catalogue);
    session.exercise().steps().stream()
        .filter(all::hasTimeFor)
        .forEach(step -> all.take(step, all.even()));
    StatedOdds odds = assessor.after(all, all.taken().size(), progress).odds();
    double least = LEFT_OPEN * odds.of(Set.of(truth));
    return session.answers().stream()
        .map(PossibleAnswers.Suspicion::id)
        .filter(id -> classes.holdAlike(id, truth) && odds.of(Set.of(id)) > least)
        .collect(Collectors.toSet());
  }

  private static Exercise endless(Exercise e) {
    return new Exercise(
        e.title(), e.level(), e.story(), e.circuit(), e.gauge(), e.steps(), 1e9, e.secret());
  }

  /** The truth, if it was named; of two faults at once each may have its own odds. */
  private static String named(
      StatedOdds answer,
      StatedOdds stated,
      AnswerClasses classes,
      String truth,
      Set<String> right) {
    Set<String> faults = classes.classesOf(truth);
    boolean both =
        faults.size() > 1 && faults.stream().allMatch(one -> stated.of(Set.of(one)) >= BOTH);
    return both || right.contains(answer.leading()) ? truth : answer.leading();
  }

  /** What was known before the first step, and after each. */
  private List<Evidence> known(TrainingSession session, Progress progress) {
    List<Evidence> known = new ArrayList<>();
    int steps = session.taken().size();
    for (int i = 0; i <= steps; i++) {
      progress.at((double) i / (steps + 1), i == 0 ? "your answer" : "step " + i + " of " + steps);
      known.add(assessor.after(session, i, new OneOf(progress, i, steps + 1)));
    }
    return known;
  }

  /** Progress of one piece of the work: it says whether to stop, and not how far it is. */
  private record OneOf(Progress all, int done, int pieces) implements Progress {
    @Override
    public void at(double share, String what) {
      all.at((done + share) / pieces, "step " + done);
    }

    @Override
    public boolean isCancelled() {
      return all.isCancelled();
    }
  }

  private List<Debrief.Line> lines(
      TrainingSession session,
      AnswerClasses classes,
      Set<String> right,
      List<Evidence> known,
      String named) {
    TrainingCar other = other(session, right.contains(named) ? Suspect.NONE : named);
    Set<String> truth = classes.classesOf(session.car().truth());
    List<Debrief.Line> lines = new ArrayList<>();
    double used = 0;
    for (int i = 0; i < session.taken().size(); i++) {
      TrainingSession.Taken taken = session.taken().get(i);
      Evidence before = known.get(i);
      Evidence now = known.get(i + 1);
      double left = session.exercise().minutes() - used + 1e-9;
      List<Step> affordable =
          session.exercise().steps().stream().filter(step -> step.minutes() <= left).toList();
      lines.add(
          new Debrief.Line(
              taken.step(),
              cameOf(taken),
              classes.of(taken.before()).of(truth),
              classes.of(now.odds()).of(truth),
              now.leading(),
              classes.of(now.odds()).gainedOver(classes.of(before.odds())),
              StepWorth.of(taken.step(), affordable, before),
              curves(session, i, other)));
      used += taken.step().minutes();
    }
    return lines;
  }

  private static Message cameOf(TrainingSession.Taken taken) {
    return taken
        .hold()
        .map(Debriefing::fall)
        .orElseGet(() -> Message.joined(taken.found().stream().map(Finding::message).toList()));
  }

  private static Message fall(HoldTest hold) {
    List<Reading> readings = hold.log().hold();
    Reading first = readings.get(0);
    Reading last = readings.get(readings.size() - 1);
    int seconds = (int) Math.round(last.time() - first.time());
    return Message.of(
        "%s, %d:%02d min later %s",
        Message.pressure(first.pressure()),
        seconds / 60,
        seconds % 60,
        Message.pressure(last.pressure()));
  }

  private static Optional<Debrief.Curves> curves(
      TrainingSession session, int i, TrainingCar other) {
    TrainingSession.Taken taken = session.taken().get(i);
    if (!(taken.step() instanceof Step.Hold hold)) {
      return Optional.empty();
    }
    double[] times = HoldCurve.times(hold.watched() * 60, PIECES);
    return Optional.of(
        new Debrief.Curves(
            taken, times, session.car().needle(hold, i, times), other.needle(hold, i, times)));
  }

  /** The same car with another fault, at its usual size. */
  private TrainingCar other(TrainingSession session, String id) {
    Exercise e = session.exercise();
    Secret secret = new Secret(faults(id), e.secret().seed());
    return new TrainingCar(
        new Exercise(
            e.title(),
            e.level(),
            e.story(),
            e.circuit(),
            e.gauge(),
            e.steps(),
            e.minutes(),
            secret),
        catalogue);
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
        parts.stream().map(PossibleAnswers.Suspicion::words).collect(Collectors.joining(". And: ")),
        parts.stream().map(PossibleAnswers.Suspicion::where).collect(Collectors.joining(", ")),
        parts.stream().map(PossibleAnswers.Suspicion::symptoms).collect(Collectors.joining(" ")),
        parts.stream().map(PossibleAnswers.Suspicion::repair).collect(Collectors.joining(" ")));
  }
}
