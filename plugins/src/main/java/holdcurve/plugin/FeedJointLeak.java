package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.fault.Site;
import holdcurve.part.CheckValve;
import holdcurve.part.Regions;
import java.util.List;
import java.util.stream.Stream;

/** A joint between the check valve and the first clamp after it. */
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
    return circuit.partsOf(CheckValve.KIND).stream().flatMap(v -> after(v, circuit)).toList();
  }

  private static Stream<Site> after(Part valve, Circuit circuit) {
    return new JointPlaces(circuit)
        .site(valve.to(), Regions.of(circuit).around(valve.to())).stream();
  }
}
