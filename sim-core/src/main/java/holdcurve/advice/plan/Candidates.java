package holdcurve.advice.plan;

import holdcurve.common.message.PartName;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Hose;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.List;

/** The tests that can be done on a circuit. */
final class Candidates {
  private static final double HOLD = 10;
  private static final double LONG_HOLD = 30;
  private static final double STOOD = 320;

  private Candidates() {}

  static List<CandidateTest> of(Job job, List<Hypothesis> open) {
    List<CandidateTest> all = new ArrayList<>(holds(job.circuit()));
    all.addAll(new FindingTests(job).candidates(open));
    all.add(HoldCandidate.plain("hold-longer", "Hold for half an hour", List.of(), LONG_HOLD));
    all.add(
        new HoldCandidate(
            "prime-twice",
            "Prime twice, then hold: stretched hoses",
            List.of(),
            HOLD,
            STOOD,
            false));
    all.add(
        new HoldCandidate(
            "log-temperature", "Hold with the fuel temperature logged", List.of(), HOLD, 20, true));
    return all;
  }

  /** Without a clamp, each clampable hose, and each two of them. */
  static List<CandidateTest> holds(Circuit circuit) {
    List<CandidateTest> holds = new ArrayList<>();
    holds.add(HoldCandidate.plain("hold", "Hold again without a clamp", List.of(), HOLD));
    List<String> hoses = Hose.clampable(circuit);
    for (int i = 0; i < hoses.size(); i++) {
      holds.add(clamped(List.of(hoses.get(i))));
      for (int j = i + 1; j < hoses.size(); j++) {
        holds.add(clamped(List.of(hoses.get(i), hoses.get(j))));
      }
    }
    return holds;
  }

  private static CandidateTest clamped(List<String> hoses) {
    return HoldCandidate.plain(
        "clamp-" + String.join("+", hoses),
        "Hold with the " + PartName.all(hoses) + " clamped",
        hoses,
        HOLD);
  }
}
