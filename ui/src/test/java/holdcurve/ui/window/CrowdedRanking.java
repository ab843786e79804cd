package holdcurve.ui.window;

import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.common.work.Progress;
import holdcurve.inference.answer.FaultSize;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.ranking.Ranker;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An invented ranking with many suspects and long words. */
final class CrowdedRanking implements Ranker {
  private static final int SUSPECTS = 60;

  private final Verdict.Kind kind;

  CrowdedRanking(Verdict.Kind kind) {
    this.kind = kind;
  }

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    List<Suspect> suspects = new ArrayList<>();
    for (int i = 0; i < SUSPECTS; i++) {
      suspects.add(suspect(job, i));
    }
    return new Ranking(
        job.title(),
        seed,
        new Verdict(
            kind,
            "The readings of one test without clamps can't say where the fuel goes: seven places"
                + " drain the same trapped volume; clamp the return hose and watch the gauge for"
                + " ten minutes, then count drops at the lifted injectors."),
        suspects,
        List.of(
            new SuspectGroup(
                List.of("pair0", "pair1", "pair2"),
                0.61,
                "All three take fuel from the rail side and the gauge sees only how much; a drop"
                    + " count at the lifted injectors, or a dry joint, would show which."),
            new SuspectGroup(
                List.of("pair3", "pair4"),
                0.14,
                "Both drain the feed side; a clamp on the feed hose close to the rail would tell"
                    + " them apart.")),
        2e5,
        List.of(Message.plain("Seven suspects share one trapped volume.")));
  }

  private static Suspect suspect(Job job, int i) {
    return new Suspect(
        "pair" + i,
        "Cold-start injector drips and the joint at the gauge tee weeps",
        "cold-start-injector and gauge-tee-joint, both on the ring line before the regulator",
        Math.pow(0.76, i) * 0.24,
        Optional.of(
            i % 2 == 0
                ? new FaultSize(
                    "leak at 2 bar", Unit.MILLILITRE_PER_MINUTE, new Interval(9e-9, 1.2e-8, 1.6e-8))
                : new FaultSize(
                    "shuts below its set pressure by", Unit.BAR, new Interval(1e4, 2e4, 3e4))),
        "The plug of one cylinder is wet and the engine stumbles after a hot stop; there is a smell"
            + " of petrol under the bonnet, strongest a quarter of an hour after the engine was"
            + " stopped, and the joint at the tee is damp to the finger.",
        "Lift the cold-start injector with its line attached, prime, and count drops for five"
            + " minutes; renew it with its seal if it drips. Renew the clip and the hose end at the"
            + " tee, then repeat the hold.",
        job.tests().stream().map(CrowdedRanking::curve).toList());
  }

  private static HoldCurve curve(HoldTest test) {
    double end = test.log().holdSpan();
    return new HoldCurve(
        test.id(),
        new double[] {0, end},
        new double[] {2e5, 1.75e5},
        new double[] {1.97e5, 1.6e5},
        new double[] {2.03e5, 1.9e5});
  }
}
