package holdcurve.ui.window.holdtests;

import holdcurve.advice.live.AveragedReadings;
import holdcurve.advice.live.Expectation;
import holdcurve.advice.live.LiveAssessment;
import holdcurve.advice.live.SoundHold;
import holdcurve.common.work.Progress;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.WorkModel;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What a sound circuit would show in the hold being read, and what can be said beside that. */
final class SoundBand {
  private static final long SEED = 1;
  private static final LiveAssessment NOTHING_YET =
      new LiveAssessment(LiveAssessment.Kind.EARLY, Double.POSITIVE_INFINITY);

  private final WorkModel work;
  private final Runnable found;
  private Expectation expectation;
  private Question asked;
  private WorkModel.Item asking;

  /** The readings for which asking was stopped; the next one asks again. */
  private List<Reading> stoppedAt;

  private List<Reading> judged = List.of();
  private LiveAssessment judgement = NOTHING_YET;

  /** Everything that an expectation depends on. */
  private record Question(
      Circuit circuit,
      GaugeSpec gauge,
      Set<String> clamped,
      double clampTime,
      double primeTime,
      OptionalDouble temperature,
      Reading first,
      double span) {}

  private record Answer(Optional<Expectation> expectation, LiveAssessment judgement) {}

  /**
   * @param found run once an answer is there
   */
  SoundBand(WorkModel work, Runnable found) {
    this.work = work;
    this.found = found;
  }

  /**
   * Asks in the background, where that isn't known yet. A logger's readings are judged there too:
   * there may be many thousands.
   *
   * @param hold readings on the clock of the hold
   * @param span for how long the band is wanted [s]
   */
  void ask(Job job, HoldTest test, List<Reading> hold, double span) {
    Question question =
        AveragedReadings.first(hold).map(first -> question(job, test, first, span)).orElse(null);
    boolean again = stoppedAt != null && stoppedAt != hold;
    if (Objects.equals(question, asked) && !again) {
      return;
    }
    if (asking != null) {
      asking.cancel();
    }
    asked = question;
    stoppedAt = null;
    expectation = null;
    if (question != null) {
      asking =
          work.start(
              "Expected readings",
              progress -> answer(question, test, hold, progress),
              answer -> take(question, answer, hold));
      WorkModel.Item started = asking;
      asking.ifBrokenOff(() -> brokenOff(started, hold));
    }
  }

  private void brokenOff(WorkModel.Item item, List<Reading> hold) {
    if (item == asking) {
      asking = null;
      stoppedAt = hold;
      found.run();
    }
  }

  private static Question question(Job job, HoldTest test, Reading first, double span) {
    return new Question(
        job.circuit(),
        job.gauge(),
        test.clamped(),
        test.clampTime(),
        test.primeTime(),
        test.fuelTemperature(),
        first,
        span);
  }

  private static Answer answer(
      Question question, HoldTest test, List<Reading> hold, Progress progress) {
    Optional<Expectation> expected =
        SoundHold.expect(
            question.circuit(), question.gauge(), test, question.span(), SEED, progress);
    return new Answer(expected, expected.map(e -> LiveAssessment.of(e, hold)).orElse(NOTHING_YET));
  }

  private void take(Question question, Answer answer, List<Reading> hold) {
    if (question.equals(asked)) {
      expectation = answer.expectation().orElse(null);
      judged = hold;
      judgement = answer.judgement();
      asking = null;
      found.run();
    }
  }

  /** The band; empty while it isn't known. */
  Optional<HoldCurve> curve() {
    return Optional.ofNullable(expectation).map(Expectation::band);
  }

  /** What can be said of these readings. */
  JudgementWords words(List<Reading> hold) {
    if (asked == null) {
      return JudgementWords.nothingRead();
    }
    if (expectation == null) {
      return JudgementWords.notJudged(asking != null);
    }
    if (hold != judged) {
      judged = hold;
      judgement = LiveAssessment.of(expectation, hold);
    }
    return JudgementWords.of(judgement, expectation, hold.get(hold.size() - 1).time());
  }
}
