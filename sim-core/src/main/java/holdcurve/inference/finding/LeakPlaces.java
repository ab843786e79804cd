package holdcurve.inference.finding;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Regions;
import holdcurve.physics.part.Regulator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where a leak can be met with from outside. */
final class LeakPlaces {
  private final Circuit circuit;
  private final Regions regions;

  LeakPlaces(Circuit circuit) {
    this.circuit = circuit;
    this.regions = Regions.of(circuit);
  }

  /** The parts one of which a member's leak wets from outside; none if it stays inside. */
  static List<String> wetted(CircuitState.Member member, List<LeakPath> leaks) {
    boolean outside = leaks.stream().anyMatch(leak -> leak.to().equals(Circuit.AIR));
    return outside ? member.site().parts() : List.of();
  }

  /** The injectors that a member makes drip, or empty. */
  String dripping(CircuitState.Member member, List<LeakPath> leaks) {
    return isInto(leaks, Circuit.MANIFOLD) && !isRegulator(member)
        ? member.site().parts().get(0)
        : "";
  }

  /** Whether a member lets fuel through the regulator's diaphragm. */
  boolean wetsReferenceHose(CircuitState.Member member, List<LeakPath> leaks) {
    return isInto(leaks, Circuit.MANIFOLD) && isRegulator(member);
  }

  private static boolean isInto(List<LeakPath> leaks, String boundary) {
    return leaks.stream().anyMatch(leak -> leak.to().equals(boundary));
  }

  private boolean isRegulator(CircuitState.Member member) {
    return member.site().parts().stream()
        .map(circuit::part)
        .anyMatch(part -> part.kind() == Regulator.KIND);
  }

  /** Whether a member's leak can wet a part at the end that was looked at. */
  boolean reaches(CircuitState.Member member, String part, Optional<String> end) {
    return member.site().parts().contains(part)
        && (end.isEmpty() || isEndOfStretch(member, circuit.part(part), end.get()));
  }

  /** A part that the fault counts to a stretch in which it doesn't end is wet there at any end. */
  private boolean isEndOfStretch(CircuitState.Member member, Part part, String end) {
    Set<String> stretch = regions.around(member.site().point());
    if (circuit.isBoundary(end)) {
      return stretch.contains(end.equals(part.from()) ? part.to() : part.from());
    }
    boolean apart = !stretch.contains(part.from()) && !stretch.contains(part.to());
    return stretch.contains(end) || apart;
  }

  /** Flow of leaks to a boundary, everything else at surroundings' pressure [m³/s]. */
  static double flow(List<LeakPath> leaks, double pressure) {
    return leaks.stream().mapToDouble(leak -> leak.law().flow(pressure)).sum();
  }
}
