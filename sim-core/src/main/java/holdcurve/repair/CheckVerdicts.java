package holdcurve.repair;

import holdcurve.infer.Chance;
import holdcurve.infer.Interval;
import holdcurve.infer.Ranking;
import holdcurve.infer.Suspect;
import holdcurve.infer.SuspectGroup;
import holdcurve.infer.Verdict;
import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.job.Timeline;
import holdcurve.log.Reading;
import holdcurve.part.Seats;
import holdcurve.repair.CheckVerdict.Kind;
import holdcurve.saying.Saying;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts the answer in a sentence, and claims no more than the readings earn. */
final class CheckVerdicts {
  /** Probability from which an answer is given as one [-]. */
  private static final double EARNED = 0.8;

  /** Probability of a fault that is enough where the hold fails the pass limit besides [-]. */
  private static final double LIKELY = 2.0 / 3;

  /** Readings that a hold needs at least. */
  private static final int LEAST_READINGS = 5;

  /** A rise of the needle that rounding doesn't explain, in steps of the gauge [-]. */
  private static final double RISE = 2;

  private final Job job;
  private final Timeline timeline;
  private final Ranking ranking;
  private final LeakMixture leaks;
  private final List<PassMark> marks;
  private final double sound;

  CheckVerdicts(
      Job job, Timeline timeline, Ranking ranking, LeakMixture leaks, List<PassMark> marks) {
    this.job = job;
    this.timeline = timeline;
    this.ranking = ranking;
    this.leaks = leaks;
    this.marks = marks;
    sound = ranking.suspect(Suspect.NONE).probability();
  }

  CheckVerdict verdict() {
    if (ranking.verdict().kind() == Verdict.Kind.UNEXPLAINED) {
      return cannotSay(
          "no listed fault and no sound circuit gives such readings",
          "Check the circuit description, the clamps and the log.");
    }
    if (sound <= (failsMark() ? 1 - LIKELY : 1 - EARNED)) {
      return faulty();
    }
    Optional<CheckVerdict> doubt = doubt();
    if (doubt.isPresent()) {
      return doubt.get();
    }
    return sound >= EARNED
        ? holds()
        : cannotSay(
            "it may be sound (" + Chance.words(sound) + ") or lose a little",
            anyWithoutTemperature()
                ? "Hold longer, and log the fuel temperature."
                : "Hold longer, or clamp and hold again.");
  }

  /** What keeps a hold from proving anything, though no fault shows. */
  private Optional<CheckVerdict> doubt() {
    if (timeline.checked().tests().stream().allMatch(this::isShort)) {
      return Optional.of(
          cannotSay(
              "the hold is too short to prove anything",
              String.format(
                  Locale.ROOT,
                  "Prime again and watch the gauge for at least %.0f minutes, with five readings or"
                      + " more.",
                  Math.ceil(job.upkeep().pass().time() / 60))));
    }
    if (timeline.checked().tests().stream().anyMatch(this::warms)) {
      return Optional.of(
          cannotSay(
              "the needle rose during the hold: the fuel warmed, and a leak can hide behind that",
              "Let the car stand until all is at one temperature, or log the fuel temperature, and"
                  + " hold again."));
    }
    if (sound >= EARNED && failsMark()) {
      return Optional.of(
          cannotSay(
              "hose stretch and temperature can explain the fall, but it ends below the pass limit",
              "Prime again and repeat the hold: hose that has just been under pressure stretches"
                  + " less, while a leak stays the same."));
    }
    return Optional.empty();
  }

  private boolean failsMark() {
    return marks.stream().anyMatch(m -> m.outcome() == PassMark.Outcome.FAILS);
  }

  private boolean isShort(HoldTest test) {
    return test.log().holdSpan() < job.upkeep().pass().time() - 1
        || test.log().hold().size() < LEAST_READINGS;
  }

  private boolean warms(HoldTest test) {
    if (test.log().hasTemperature()) {
      return false;
    }
    double least = Double.POSITIVE_INFINITY;
    double rise = 0;
    for (Reading reading : test.log().hold()) {
      least = Math.min(least, reading.pressure());
      rise = Math.max(rise, reading.pressure() - least);
    }
    return rise > RISE * job.gauge().resolution() * 1.001;
  }

  private boolean anyWithoutTemperature() {
    return timeline.checked().tests().stream().anyMatch(test -> !test.log().hasTemperature());
  }

  private CheckVerdict holds() {
    String rest =
        leaks
            .leak()
            .map(
                leak ->
                    " If anything leaks at all, it is less than " + rate(leak.high()) + " mL/min.")
            .orElse("");
    return new CheckVerdict(
        Kind.HOLDS,
        Saying.of(
            "Holds as expected (%s): hose stretch, temperature and the weep of sound seats explain"
                + " the fall.%s",
            Chance.words(sound), rest),
        "");
  }

  private CheckVerdict cannotSay(String why, String next) {
    return new CheckVerdict(Kind.CANNOT_SAY, Saying.of("Cannot say: %s.", why), next);
  }

  private CheckVerdict faulty() {
    Suspect first = ranking.suspects().stream().filter(s -> !s.isNone()).findFirst().orElseThrow();
    String still = timeline.repair().isPresent() ? "Still loses " : "Loses ";
    boolean leak = leaks.probability() >= (1 - sound) / 2;
    Saying what =
        leak
            ? Saying.of("%s%s, most likely at ", still, size(leaks.leak().orElseThrow()))
            : Saying.plain("Not as a sound circuit is; most likely at ");
    return new CheckVerdict(
        Kind.FAULTY, Saying.of("%s%s.%s", what, place(first), passed()), next(first));
  }

  private static Saying size(Interval leak) {
    return Saying.of(
        "%s mL/min at %s (90 %% range %s to %s)",
        rate(leak.middle()),
        Saying.round(Seats.TEST_PRESSURE),
        rate(leak.low()),
        rate(leak.high()));
  }

  private static String place(Suspect first) {
    return first.where()
        + ": "
        + first.name().substring(0, 1).toLowerCase(Locale.ROOT)
        + first.name().substring(1)
        + " ("
        + Chance.words(first.probability())
        + ")";
  }

  private String passed() {
    return !marks.isEmpty() && marks.stream().allMatch(m -> m.outcome() == PassMark.Outcome.PASSES)
        ? " It stays above the pass limit all the same."
        : "";
  }

  /** A repair is only worth starting on a place that was found. */
  private String next(Suspect first) {
    Optional<SuspectGroup> group =
        ranking.groups().stream().filter(g -> g.suspects().contains(first.id())).findFirst();
    if (first.probability() >= EARNED) {
      return first.repair();
    }
    return group
        .filter(g -> g.probability() >= EARNED)
        .map(
            g ->
                g.suspects().size()
                    + " places can't be told apart by these tests: look for wet joints, then do"
                    + " what the plan of tests puts first.")
        .orElse(
            "Where is not settled: look for wet joints, then do what the plan of tests puts"
                + " first.");
  }

  private static String rate(double flow) {
    double perMinute = flow * 60e6;
    return String.format(Locale.ROOT, perMinute < 1 ? "%.2f" : "%.1f", perMinute);
  }
}
