package holdcurve.infer;

import holdcurve.circuit.Circuit;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.finding.JointLook;
import holdcurve.job.Job;
import java.util.Set;
import java.util.stream.Collectors;

/** Joints that were found wet, and the leaks that wet them. */
final class WetJoints {
  private final Circuit circuit;
  private final Set<String> wet;

  WetJoints(Job job) {
    circuit = job.circuit();
    wet =
        job.findings().stream()
            .filter(JointLook.class::isInstance)
            .map(JointLook.class::cast)
            .filter(JointLook::wet)
            .flatMap(look -> look.part().stream())
            .collect(Collectors.toSet());
  }

  /** Whether a fault loses fuel at one of them. */
  boolean speakFor(LeakFault fault) {
    try {
      return !wet.isEmpty()
          && fault.sites(circuit).stream().anyMatch(site -> isWet(site) && leaks(fault, site));
    } catch (RuntimeException e) {
      return false;
    }
  }

  private boolean isWet(Site site) {
    return site.parts().stream().anyMatch(wet::contains);
  }

  private boolean leaks(LeakFault fault, Site site) {
    return !new Hypothesis.Member(fault, site).leaks(circuit).isEmpty();
  }
}
