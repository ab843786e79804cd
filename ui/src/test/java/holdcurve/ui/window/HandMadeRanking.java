package holdcurve.ui.window;

import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.common.work.Progress;
import holdcurve.inference.answer.Diagnosis;
import holdcurve.inference.answer.FaultSize;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Reason;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.ranking.Ranker;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.Cause;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** An invented ranking: every curve falls exponentially, some sooner than others. */
public final class HandMadeRanking implements Ranker {
  /** Ids of its suspects, likeliest first. */
  public static final List<String> IDS =
      List.of(
          "check-valve-seat@check-valve",
          "hose-joint@feed-hose",
          "injector-tip@injectors",
          "none",
          "regulator-seat@regulator",
          "cold-start@cold-start-injector");

  private static final double ML_PER_MIN = 1 / 6e7;

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    if (progress.isCancelled()) {
      throw new CancellationException();
    }
    progress.at(0.5, "Comparing suspects");
    return of(job);
  }

  /** A leak that two suspects explain equally well. */
  public static Ranking of(Job job) {
    return new Ranking(
        job.title(),
        1,
        Diagnosis.of(
            new Verdict(
                Verdict.Kind.LEAK,
                "Fuel goes back to the tank or out on the feed side: the check valve or the joint of"
                    + " the feed hose, 87 % together; look at the joint first."),
            0.02),
        suspects(job),
        List.of(
            new SuspectGroup(
                IDS.subList(0, 2),
                0.87,
                "Without a clamp both empty the line that the gauge reads. A dry joint after"
                    + " ten minutes under pressure clears the joint.")),
        2e5,
        job.tests().stream().map(HandMadeRanking::fall).toList(),
        List.of(reasons()),
        Message.plain(
            List.of(
                "Hose elasticity was not given: 0.2 to 0.6 mL/bar per metre was assumed.",
                "The bay was taken to cool by up to 4 K while the gauge was watched.")));
  }

  private static FallReport fall(HoldTest test) {
    List<Reading> read = test.log().hold();
    double first = read.get(0).pressure();
    double last = read.get(read.size() - 1).pressure();
    double fall = first - last;
    double[] parts = {0.6, 0.08, 0, 0.1, -0.04, 0.2, 0.02, 0.04};
    List<FallShare> shares = new ArrayList<>();
    for (Cause cause : Cause.values()) {
      shares.add(
          new FallShare(
              cause, amount(parts[cause.ordinal()] * fall), amount(parts[cause.ordinal()] * 1e-6)));
    }
    return new FallReport(test.id(), 0, test.log().holdSpan(), first, last, shares, List.of());
  }

  private static Amount amount(double mean) {
    return new Amount(mean, mean - 0.3 * Math.abs(mean), mean + 0.4 * Math.abs(mean));
  }

  private static Reasons reasons() {
    return new Reasons(
        IDS.get(0),
        IDS.get(3),
        List.of(
            new Reason(
                Message.of(
                    "'no clamps', 1.0 to 6.0 min: readings lie %s from its curve, %s from the"
                        + " other's",
                    Message.difference(900), Message.difference(12000)),
                3.1),
            new Reason(Message.plain("it is the rarer of the two"), -0.7)));
  }

  private static List<Suspect> suspects(Job job) {
    List<Suspect> all = new ArrayList<>();
    all.add(
        suspect(
            job,
            IDS.get(0),
            "Check valve leaks back to the tank",
            "at the pump outlet",
            0.55,
            0.41,
            1500));
    all.add(
        suspect(job, IDS.get(1), "Joint of the feed hose leaks", "feed-hose", 0.32, 0.43, 1480));
    all.add(suspect(job, IDS.get(2), "An injector drips", "on the ring line", 0.08, 0.5, 1250));
    all.add(suspect(job, IDS.get(3), "No fault: it only weeps", "", 0.035, 0, 6000));
    all.add(
        suspect(job, IDS.get(4), "Regulator seat leaks", "before the return", 0.011, 0.3, 2300));
    all.add(suspect(job, IDS.get(5), "Cold-start injector drips", "ring line", 0.004, 0.02, 900));
    return all;
  }

  private static Suspect suspect(
      Job job, String id, String name, String where, double p, double leak, double decay) {
    return new Suspect(
        id,
        name,
        where,
        p,
        leak == 0
            ? Optional.empty()
            : Optional.of(
                leak(0.75 * leak * ML_PER_MIN, leak * ML_PER_MIN, 1.3 * leak * ML_PER_MIN)),
        leak == 0
            ? "Pressure falls slowly and levels off; the engine starts at once even when hot."
            : "Long cranking after a hot stop of half an hour; the first start of the day needs the"
                + " pump twice. No smell of petrol.",
        leak == 0
            ? "Nothing to repair."
            : "Clean the seat by running the pump against the closed circuit in short bursts; if it"
                + " still leaks, renew the part with its sealing rings.",
        job.tests().stream().map(test -> curve(test, decay)).toList());
  }

  private static FaultSize leak(double low, double middle, double high) {
    return new FaultSize(
        "leak at 2 bar", Unit.MILLILITRE_PER_MINUTE, new Interval(low, middle, high));
  }

  private static HoldCurve curve(HoldTest test, double decay) {
    int points = 240;
    double[] time = new double[points];
    double[] middle = new double[points];
    double[] low = new double[points];
    double[] high = new double[points];
    for (int i = 0; i < points; i++) {
      time[i] = test.log().holdSpan() * i / (points - 1);
      middle[i] = 2e5 * Math.exp(-time[i] / decay) - 2e3 * (1 - Math.exp(-time[i] / 60));
      double half = 2.5e3 + 5e3 * time[i] / 720;
      low[i] = middle[i] - half;
      high[i] = middle[i] + half;
    }
    return new HoldCurve(test.id(), time, middle, low, high);
  }
}
