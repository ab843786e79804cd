package holdcurve.inference.finding;

import holdcurve.physics.circuit.LeakPath;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.Job;
import java.util.List;

/**
 * What was wet and what was dry, all looks together: a leak in a stretch of line sits at one of its
 * joints, so a dry one makes the others likelier.
 *
 * <p>P = mean over the places where the members' leaks may sit of Π P(look | leak there).
 */
final class LookLikelihood implements FindingLikelihood {
  /** A look, with what it needs worked out. */
  private record Look(Finding finding, double pressure, int test) {}

  /** A member of a truth with the places where it may show. */
  private record Leaking(
      CircuitState.Member member, List<String> wetted, boolean inHose, double[] flow) {}

  private final DetectionModel detection;
  private final LeakPlaces places;
  private final List<Look> looks;

  /**
   * @param looks {@link JointLook}s and {@link ReferenceHoseLook}s
   */
  LookLikelihood(DetectionModel detection, Job job, List<Finding> looks) {
    this.detection = detection;
    this.places = new LeakPlaces(job.circuit());
    FindingPressures pressures = new FindingPressures(job);
    this.looks =
        looks.stream()
            .map(f -> new Look(f, pressures.at(moment(f)), pressures.test(moment(f))))
            .toList();
  }

  private static Moment moment(Finding finding) {
    return finding instanceof JointLook joint ? joint.when() : ((ReferenceHoseLook) finding).when();
  }

  @Override
  public int rows() {
    return 1;
  }

  @Override
  public boolean concerns(int test) {
    return looks.stream().anyMatch(look -> look.test() == test);
  }

  @Override
  public void residuals(CircuitState truth, double[] out, int offset) {
    List<CircuitState.Member> members = truth.members();
    Leaking[] leaking = new Leaking[members.size()];
    for (int m = 0; m < leaking.length; m++) {
      leaking[m] = leaking(truth, m);
    }
    out[offset] = Deviance.root(mean(leaking, new String[leaking.length], 0));
  }

  private Leaking leaking(CircuitState truth, int m) {
    CircuitState.Member member = truth.members().get(m);
    double[] flow = new double[looks.size()];
    for (int i = 0; i < flow.length; i++) {
      flow[i] = LeakPlaces.flow(truth.leaks(m, looks.get(i).test()), looks.get(i).pressure());
    }
    List<LeakPath> leaks = truth.leaks(m, CircuitState.ALL_TESTS);
    return new Leaking(
        member, LeakPlaces.wetted(member, leaks), places.wetsReferenceHose(member, leaks), flow);
  }

  /** Mean of the probability over all places of the members from {@code next} on. */
  private double mean(Leaking[] leaking, String[] place, int next) {
    if (next == leaking.length) {
      return probability(leaking, place);
    }
    List<String> open = leaking[next].wetted();
    double sum = 0;
    for (String part : open) {
      place[next] = part;
      sum += mean(leaking, place, next + 1);
    }
    place[next] = "";
    return open.isEmpty() ? mean(leaking, place, next + 1) : sum / open.size();
  }

  private double probability(Leaking[] leaking, String[] place) {
    double product = 1;
    for (int i = 0; i < looks.size(); i++) {
      Finding finding = looks.get(i).finding();
      double found = 0;
      if (finding instanceof JointLook joint) {
        found =
            detection.foundAtJoint(
                flowAt(joint, i, leaking, place), flowNear(joint, i, leaking), joint.wiped());
        product *= joint.wet() ? found : 1 - found;
      } else if (finding instanceof ReferenceHoseLook hose) {
        found = detection.foundInHose(flowInHose(i, leaking));
        product *= hose.fuel() ? found : 1 - found;
      }
    }
    return product;
  }

  private double flowAt(JointLook look, int i, Leaking[] leaking, String[] place) {
    double flow = 0;
    for (int m = 0; m < leaking.length; m++) {
      boolean there = look.part().map(place[m]::equals).orElse(!place[m].isEmpty());
      flow += there && reaches(leaking[m], look) ? leaking[m].flow()[i] : 0;
    }
    return flow;
  }

  /** Of all leaks that sit somewhere in the stretch of the part: fuel runs along a hose [m³/s]. */
  private double flowNear(JointLook look, int i, Leaking[] leaking) {
    double flow = 0;
    for (Leaking one : leaking) {
      flow += !one.wetted().isEmpty() && reaches(one, look) ? one.flow()[i] : 0;
    }
    return flow;
  }

  private boolean reaches(Leaking one, JointLook look) {
    return look.part().map(part -> places.reaches(one.member(), part, look.end())).orElse(true);
  }

  private static double flowInHose(int i, Leaking[] leaking) {
    double flow = 0;
    for (Leaking one : leaking) {
      flow += one.inHose() ? one.flow()[i] : 0;
    }
    return flow;
  }
}
