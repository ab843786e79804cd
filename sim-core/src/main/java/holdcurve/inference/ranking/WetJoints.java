package holdcurve.inference.ranking;

import holdcurve.fault.LeakFault;
import holdcurve.inference.finding.FindingFacts;
import holdcurve.record.job.Job;

/** Joints that were found wet, and the leaks that wet them. */
final class WetJoints {
  private final FindingFacts facts;

  WetJoints(Job job) {
    facts = FindingFacts.of(job);
  }

  /** Whether a fault loses fuel at one of them. */
  boolean speakFor(LeakFault fault) {
    return facts.wetJoints().stream()
        .filter(wet -> !wet.disputed())
        .anyMatch(wet -> !facts.pointsAt(wet.look(), fault).isEmpty());
  }
}
