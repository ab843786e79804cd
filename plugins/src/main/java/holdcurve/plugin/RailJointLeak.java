package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.fault.Site;
import holdcurve.part.CheckValve;
import holdcurve.part.Injector;
import holdcurve.part.Regions;
import java.util.List;
import java.util.Set;

/** A joint between the feed clamp and the regulator: rail, ring line, gauge tee. */
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
    return "A damp hose end, injector hose or gauge tee on the rail, or a smell of fuel above the engine.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    Regions regions = Regions.of(circuit);
    for (Part injector : circuit.partsOf(Injector.KIND)) {
      Set<String> rail = regions.around(injector.from());
      if (circuit.partsOf(CheckValve.KIND).stream().noneMatch(v -> rail.contains(v.to()))) {
        return site(circuit, injector.from(), "between feed clamp and regulator", rail);
      }
    }
    return List.of();
  }
}
