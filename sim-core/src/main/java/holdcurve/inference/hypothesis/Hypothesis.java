package holdcurve.inference.hypothesis;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.inference.answer.Suspect;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A possible truth about a circuit: no fault, one fault at a site, or two.
 *
 * @param members faults at their sites, none for a sound circuit
 * @param priorWeight how likely it is before any reading, relative to others [-]
 */
public record Hypothesis(List<Member> members, double priorWeight) {
  /** One fault at one site. */
  public record Member(LeakFault fault, Site site) {
    /** {@code fault@site}. */
    public String id() {
      return fault.id() + "@" + site.id();
    }

    /** Leaks that it adds to a sound circuit at its usual size. */
    public List<LeakPath> leaks(Circuit circuit) {
      double[] usual = FaultParameter.usual(fault.parameters());
      return fault.apply(Condition.sound(circuit), site, usual).leaks();
    }
  }

  public Hypothesis {
    members = List.copyOf(members);
  }

  /** {@code none}, {@code fault@site}, or two of those joined by {@code +}. */
  public String id() {
    return members.isEmpty()
        ? Suspect.NONE
        : members.stream().map(Member::id).collect(Collectors.joining("+"));
  }

  /** Parameters of all members, in order. */
  public List<FaultParameter> parameters() {
    List<FaultParameter> parameters = new ArrayList<>();
    members.forEach(member -> parameters.addAll(member.fault().parameters()));
    return parameters;
  }

  /** In plain words. */
  public String name() {
    return members.isEmpty()
        ? "No fault"
        : members.stream()
            .map(member -> member.fault().name())
            .reduce((first, next) -> first + ", and " + lower(next))
            .orElseThrow();
  }

  private static String lower(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** Where in this circuit; empty for no fault. */
  public String where() {
    return members.stream().map(member -> member.site().where()).collect(Collectors.joining("; "));
  }

  public String symptoms() {
    return members.isEmpty()
        ? "The needle sinks slowly and ever more slowly, as hose stretch and temperature have it."
        : members.stream()
            .map(member -> member.fault().symptoms())
            .collect(Collectors.joining(" "));
  }

  /** What puts it right. */
  public String repair() {
    return members.isEmpty()
        ? "Nothing to repair."
        : members.stream().map(member -> member.fault().repair()).collect(Collectors.joining(" "));
  }
}
