package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.fault.Site;
import holdcurve.part.CheckValve;
import holdcurve.part.Regions;
import java.util.ArrayList;
import java.util.List;

/** A joint between the check valve and the feed clamp. */
public final class FeedJointLeak extends JointLeak {
  @Override
  public String id() {
    return "feed-side-joint";
  }

  @Override
  public String name() {
    return "Joint leaks on the feed side";
  }

  @Override
  public String symptoms() {
    return "A damp hose end or a smell of fuel between the pump and the place where the feed hose is clamped.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    Regions regions = Regions.of(circuit);
    List<Site> sites = new ArrayList<>();
    for (Part valve : circuit.partsOf(CheckValve.KIND)) {
      sites.addAll(
          site(
              circuit,
              valve.to(),
              "between check valve and feed clamp",
              regions.around(valve.to())));
    }
    return sites;
  }
}
