package holdcurve.ui;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.CheckVerdict.Kind;
import holdcurve.advice.check.RepairCheck;
import holdcurve.advice.check.RepairChecker;
import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.common.work.Progress;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.Timeline;
import holdcurve.ui.window.HandMadeRanking;
import java.util.List;
import java.util.Optional;

/** An invented check of a job's own tests: the bands are exponentials. */
public final class HandMadeCheck implements RepairChecker {
  private final Kind kind;

  public HandMadeCheck(Kind kind) {
    this.kind = kind;
  }

  @Override
  public RepairCheck check(Job job, Optional<String> testId, long seed, Progress progress) {
    Timeline timeline = testId.map(id -> Timeline.of(job, id)).orElseGet(() -> Timeline.of(job));
    List<HoldTest> tests = timeline.checked().tests();
    Ranking ranking = HandMadeRanking.of(job.withTests(tests));
    boolean history = !timeline.earlier().isEmpty();
    return new RepairCheck(
        job.title(),
        timeline,
        verdict(),
        kind == Kind.HOLDS ? 0.95 : 0.02,
        Optional.of(new Interval(2e-9, 4e-9, 7e-9)),
        job.upkeep().pass(),
        tests.stream()
            .filter(test -> test.clamped().isEmpty())
            .map(test -> new PassMark(test.id(), 1.8e5, PassMark.Outcome.PASSES))
            .toList(),
        tests.stream().map(test -> band(test, 0.3)).toList(),
        history ? tests.stream().map(test -> band(test, 0.1)).toList() : List.of(),
        ranking,
        history
            ? Optional.of(
                HandMadeRanking.of(
                    job.withTests(timeline.earlier().get(timeline.earlier().size() - 1).tests())))
            : Optional.empty(),
        kind == Kind.FAULTY ? List.of("check-valve") : List.of(),
        List.of(
            Message.plain(
                "Hose elasticity was not given: 0.2 to 0.6 mL/bar per metre was assumed.")));
  }

  private CheckVerdict verdict() {
    return switch (kind) {
      case HOLDS ->
          new CheckVerdict(
              kind,
              Message.plain("No fault found (95 %). 1.80 bar after 5 min; the limit is 1.70 bar."),
              Message.plain(""));
      case FAULTY ->
          new CheckVerdict(
              kind,
              Message.of(
                  "Still loses 0.23 mL/min at %s (90 %% range 0.16 to 0.33), most likely at"
                      + " the check valve: check valve leaks back to the tank (23 %%).",
                  Message.round(2e5)),
              Message.plain("Wipe every joint dry, prime, and look at each with a cold lamp."));
      case CANNOT_SAY ->
          new CheckVerdict(
              kind,
              Message.plain("Cannot say: the hold is too short to prove anything."),
              Message.plain("Prime again and read the gauge for at least five minutes."));
    };
  }

  private static HoldCurve band(HoldTest test, double width) {
    int points = 60;
    double[] time = new double[points];
    double[] middle = new double[points];
    double[] low = new double[points];
    double[] high = new double[points];
    for (int i = 0; i < points; i++) {
      time[i] = test.log().holdSpan() * i / (points - 1);
      middle[i] = 2.05e5 * Math.exp(-time[i] / 3500);
      double half = 1e5 * width * (0.3 + 0.7 * i / points);
      low[i] = middle[i] - half;
      high[i] = middle[i] + half;
    }
    return new HoldCurve(test.id(), time, middle, low, high);
  }
}
