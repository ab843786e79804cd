package holdcurve.plugin;

import holdcurve.common.message.PartName;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import java.util.List;
import java.util.function.Function;

/** Sites for faults that sit in one part. */
final class PartSites {
  private PartSites() {}

  /**
   * One site for each part of a kind, called by the part's own name.
   *
   * @param point which connection point of the part the fault acts on
   */
  static List<Site> of(Circuit circuit, PartKind kind, Function<Part, String> point) {
    return circuit.partsOf(kind).stream()
        .map(
            part ->
                new Site(part.id(), PartName.of(part.id()), point.apply(part), List.of(part.id())))
        .toList();
  }
}
