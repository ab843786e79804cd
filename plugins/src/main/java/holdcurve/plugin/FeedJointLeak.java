package holdcurve.plugin;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
    return "A damp hose end or a smell of fuel between the pump and the feed hose.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return circuit.partsOf(CheckValve.KIND).stream().flatMap(v -> after(v, circuit)).toList();
  }

  /** A valve right at the pump's outlet is screwed into it: the pump's union comes after it. */
  private static Stream<Site> after(Part valve, Circuit circuit) {
    Set<String> piece = Regions.of(circuit).around(valve.to());
    List<String> joints = new ArrayList<>(Regions.joints(circuit, piece));
    circuit.partsOf(Pump.KIND).stream()
        .filter(pump -> pump.to().equals(valve.from()))
        .forEach(pump -> joints.add(0, pump.id()));
    return new JointPlaces(circuit).site(valve.to(), piece, joints).stream();
  }
}
