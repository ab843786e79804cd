package holdcurve.inference.finding;

import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultFailure;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a job's findings come to: where petrol is seen, which of them contradict each other, which
 * still stand, and which faults each points at.
 */
public final class FindingFacts {
  /**
   * A part that is wet.
   *
   * @param look the look that says so, the one after wiping where there are several
   * @param part id of the part
   * @param name what people call it
   * @param wiped whether it had been wiped dry before, so that the fuel can't have been spilt
   * @param disputed whether another finding says that it was dry at that time
   */
  public record WetJoint(
      JointLook look, String part, String name, boolean wiped, boolean disputed) {}

  /**
   * Drops that are clearly more than sound seats let past.
   *
   * @param count the count
   * @param part id of the injectors, or of the cold-start injector
   * @param name what people call them
   * @param number which of them; empty where all were counted together
   * @param drops how many
   * @param minutes in how many minutes
   */
  public record Drip(
      DropCount count, String part, String name, OptionalInt number, int drops, double minutes) {}

  /** Two findings that can't both be right; the likelihood uses neither of them. */
  public record Contradiction(Finding one, Finding other) {
    /** For a person: "front hose wet" against "every joint dry". */
    public Message message() {
      return Message.of("\"%s\" against \"%s\"", one.message(), other.message());
    }

    boolean names(Finding finding) {
      return finding == one || finding == other;
    }
  }

  private final Job job;
  private final Circuit circuit;
  private final LeakPlaces places;
  private final List<Finding> standing;
  private final List<Contradiction> contradictions;

  private FindingFacts(Job job) {
    this.job = job;
    this.circuit = job.circuit();
    this.places = new LeakPlaces(circuit);
    FindingOrder order = new FindingOrder(job);
    standing = job.findings().stream().filter(finding -> !order.isOvertaken(finding)).toList();
    contradictions = new ArrayList<>();
    for (int i = 0; i < standing.size(); i++) {
      for (int j = i + 1; j < standing.size(); j++) {
        if (order.contradict(standing.get(i), standing.get(j))) {
          contradictions.add(new Contradiction(standing.get(i), standing.get(j)));
        }
      }
    }
  }

  public static FindingFacts of(Job job) {
    return new FindingFacts(job);
  }

  /** Pairs to be asked about. */
  public List<Contradiction> contradictions() {
    return List.copyOf(contradictions);
  }

  /** What the likelihood uses: without what a later look overtakes, and without contradictions. */
  public List<Finding> used() {
    return standing.stream().filter(finding -> !isDisputed(finding)).toList();
  }

  private boolean isDisputed(Finding finding) {
    return contradictions.stream().anyMatch(pair -> pair.names(finding));
  }

  /** One entry a part, in the order of the findings. */
  public List<WetJoint> wetJoints() {
    Map<String, WetJoint> wet = new LinkedHashMap<>();
    for (Finding finding : standing) {
      if (finding instanceof JointLook look && look.wet()) {
        String part = look.part().orElseThrow();
        wet.merge(
            part,
            new WetJoint(look, part, PartName.of(part), look.wiped(), isDisputed(look)),
            FindingFacts::stronger);
      }
    }
    return List.copyOf(wet.values());
  }

  private static WetJoint stronger(WetJoint a, WetJoint b) {
    if (a.disputed() != b.disputed()) {
      return a.disputed() ? b : a;
    }
    return b.wiped() && !a.wiped() ? b : a;
  }

  /** The look that found fuel in the regulator's thin hose; empty if none did. */
  public Optional<ReferenceHoseLook> fuelInThinHose() {
    return used().stream()
        .filter(ReferenceHoseLook.class::isInstance)
        .map(ReferenceHoseLook.class::cast)
        .filter(ReferenceHoseLook::fuel)
        .findFirst();
  }

  /** Counts that are clearly more than sound seats let past, the fastest drip first. */
  public List<Drip> drips() {
    FindingPressures pressures = new FindingPressures(job);
    DetectionModel detection = DetectionModel.shipped();
    List<Drip> drips = new ArrayList<>();
    for (Finding finding : used()) {
      if (finding instanceof DropCount count
          && DropLikelihood.isDrip(
              detection, circuit.part(count.part()), count, pressures.at(count.when()))) {
        drips.add(
            new Drip(
                count,
                count.part(),
                PartName.of(count.part()),
                count.number(),
                count.drops(),
                count.duration() / 60));
      }
    }
    drips.sort((a, b) -> Double.compare(b.drops() / b.minutes(), a.drops() / a.minutes()));
    return List.copyOf(drips);
  }

  /** The faults, at their places, that a wet joint, fuel in the thin hose or a drip points at. */
  public List<CircuitState.Member> pointsAt(Finding finding, FaultCatalogue catalogue) {
    return catalogue.faults().stream().flatMap(fault -> pointsAt(finding, fault).stream()).toList();
  }

  /** The places of one fault that a finding points at. */
  public List<CircuitState.Member> pointsAt(Finding finding, LeakFault fault) {
    return FaultCatalogue.sites(fault, circuit).stream()
        .map(site -> new CircuitState.Member(fault, site))
        .filter(member -> isPointedAt(finding, member))
        .toList();
  }

  private boolean isPointedAt(Finding finding, CircuitState.Member member) {
    List<LeakPath> leaks = leaks(member.fault(), member.site());
    if (finding instanceof JointLook look) {
      return look.wet()
          && !LeakPlaces.wetted(member, leaks).isEmpty()
          && places.reaches(member, look.part().orElseThrow(), look.end());
    }
    if (finding instanceof DropTestResult result) {
      return !result.staysOpen().isEmpty() && places.dripping(member, leaks).equals(result.part());
    }
    if (finding instanceof DropCount count) {
      return count.drops() > 0 && places.dripping(member, leaks).equals(count.part());
    }
    return finding instanceof ReferenceHoseLook hose
        && hose.fuel()
        && places.wetsReferenceHose(member, leaks);
  }

  /** A fault that fails at its usual size opens none; the ranking says that it failed. */
  private List<LeakPath> leaks(LeakFault fault, Site site) {
    try {
      double[] usual = FaultParameter.usual(fault.parameters());
      return fault.apply(Condition.sound(circuit), site, usual).leaks();
    } catch (FaultFailure e) {
      return List.of();
    }
  }
}
