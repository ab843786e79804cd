package holdcurve.plugin;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Injector;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A joint beyond the first clamp: rail, ring line, and whatever other clamps divide off. */
public final class RailJointLeak extends JointLeak {
  @Override
  public String id() {
    return "rail-side-joint";
  }

  @Override
  public String name() {
    return "Joint leaks at the rail";
  }

  @Override
  public String symptoms() {
    return "A damp hose end or injector hose on the rail or ring line, or a smell of fuel above the engine.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    JointPlaces places = new JointPlaces(circuit);
    Set<Set<String>> pieces = places.held();
    pieces.removeAll(places.afterCheckValve());
    List<Site> sites = new ArrayList<>();
    pieces.forEach(piece -> sites.addAll(places.site(name(piece, circuit), piece)));
    return sites;
  }

  /** Called by the point of the injectors where there are any. */
  private static String name(Set<String> piece, Circuit circuit) {
    return circuit.partsOf(Injector.KIND).stream()
        .map(Part::from)
        .filter(piece::contains)
        .findFirst()
        .orElse(piece.iterator().next());
  }
}
