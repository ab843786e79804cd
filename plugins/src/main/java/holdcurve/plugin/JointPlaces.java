package holdcurve.plugin;

import holdcurve.common.message.PartName;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regions;
import holdcurve.physics.part.Regulator;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The stretches of line that clamps and valves divide. A gauge can't tell the joints of one stretch
 * apart, so each stretch is one site.
 */
final class JointPlaces {
  private static final Set<PartKind> VALVES = Set.of(Pump.KIND, CheckValve.KIND, Regulator.KIND);

  private final Circuit circuit;

  JointPlaces(Circuit circuit) {
    this.circuit = circuit;
  }

  /** Stretches right after a check valve. */
  Set<Set<String>> afterCheckValve() {
    Set<Set<String>> pieces = new LinkedHashSet<>();
    circuit.partsOf(CheckValve.KIND).forEach(valve -> addAround(valve.to(), pieces));
    return pieces;
  }

  /** Every stretch that holds pressure after the pump has stopped. */
  Set<Set<String>> held() {
    return grown(afterCheckValve());
  }

  /** Every stretch of the return. */
  Set<Set<String>> returning() {
    Set<Set<String>> pieces = new LinkedHashSet<>();
    circuit.partsOf(Regulator.KIND).forEach(regulator -> addAround(regulator.to(), pieces));
    return grown(pieces);
  }

  /**
   * Every stretch that is neither held nor of the return: what leads from the tank to the valve.
   */
  Set<Set<String>> supplying() {
    Set<Set<String>> pieces = new LinkedHashSet<>(Regions.of(circuit).pieces());
    pieces.removeAll(held());
    pieces.removeAll(returning());
    return pieces;
  }

  /** With the stretches beyond the clamps, as far as no valve stands between. */
  private Set<Set<String>> grown(Set<Set<String>> pieces) {
    for (int before = 0; before < pieces.size(); ) {
      before = pieces.size();
      addNeighbours(pieces);
    }
    return pieces;
  }

  private void addNeighbours(Set<Set<String>> pieces) {
    for (Part part : circuit.parts()) {
      if (part.kind() == Hose.KIND) {
        boolean from = pieces.stream().anyMatch(piece -> piece.contains(part.from()));
        boolean to = pieces.stream().anyMatch(piece -> piece.contains(part.to()));
        if (from != to) {
          addAround(from ? part.to() : part.from(), pieces);
        }
      }
    }
  }

  private void addAround(String point, Set<Set<String>> pieces) {
    Set<String> piece = Regions.of(circuit).around(point);
    if (!piece.isEmpty()) {
      pieces.add(piece);
    }
  }

  /** A site for a stretch; none where nothing is joined by hand. */
  List<Site> site(String id, Set<String> piece) {
    return site(id, piece, Regions.joints(circuit, piece));
  }

  /** Likewise, with the tank that a part of the stretch leads from or to. */
  List<Site> siteWithTank(String id, Set<String> piece) {
    List<String> joints = new ArrayList<>(Regions.joints(circuit, piece));
    for (Part tank : circuit.parts()) {
      if (tank.kind().ports() == Ports.PLACE && leadsTo(tank.id(), piece)) {
        joints.add(tank.id());
      }
    }
    return site(id, piece, joints);
  }

  private boolean leadsTo(String place, Set<String> piece) {
    return circuit.parts().stream()
        .anyMatch(
            part ->
                (part.from().equals(place) && piece.contains(part.to()))
                    || (part.to().equals(place) && piece.contains(part.from())));
  }

  List<Site> site(String id, Set<String> piece, List<String> joints) {
    return joints.isEmpty()
        ? List.of()
        : List.of(new Site(id, where(piece), piece.iterator().next(), joints));
  }

  /** What bounds a stretch, such as "between the check valve and the middle of the feed hose". */
  private String where(Set<String> piece) {
    List<String> ends = new ArrayList<>();
    for (Part part : circuit.parts()) {
      boolean from = piece.contains(part.from());
      if (from != piece.contains(part.to())) {
        end(part, from ? part.to() : part.from()).ifPresent(ends::add);
      }
    }
    String last = ends.isEmpty() ? circuit.title() : ends.remove(ends.size() - 1);
    return ends.isEmpty()
        ? "next to " + last
        : "between " + String.join(", ", ends) + " and " + last;
  }

  private Optional<String> end(Part part, String beyond) {
    if (VALVES.contains(part.kind()) && !(part.kind() == Pump.KIND && circuit.isBoundary(beyond))) {
      return Optional.of("the " + PartName.of(part.id()));
    }
    if (part.kind() == Hose.KIND && !circuit.isBoundary(beyond)) {
      return Optional.of("the middle of the " + PartName.of(part.id()));
    }
    return circuit.isBoundary(beyond)
        ? Optional.of("the " + PartName.of(beyond))
        : Optional.empty();
  }
}
