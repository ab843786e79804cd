package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.common.message.PartName;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Joint;
import java.util.List;
import java.util.stream.Stream;

/** The joint that the tester made himself, where the gauge is tee'd in. */
public final class GaugeTeeLeak extends JointLeak {
  @Override
  public String id() {
    return "gauge-tee";
  }

  @Override
  public String name() {
    return "Gauge connection leaks";
  }

  @Override
  public String symptoms() {
    return "A damp tee, hose clip or gauge thread. The car itself showed no trouble with starting.";
  }

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Dry the tee and the gauge hose, prime and look. Remake the joint and hold again before you take anything else apart.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return circuit.partsOf(Gauge.KIND).stream()
        .map(
            gauge ->
                new Site(gauge.id(), PartName.of(gauge.id()), gauge.from(), joints(gauge, circuit)))
        .toList();
  }

  /** The gauge, and what joint is named at the point where it sits. */
  private static List<String> joints(Part gauge, Circuit circuit) {
    Stream<Part> named =
        circuit.partsOf(Joint.KIND).stream().filter(joint -> joint.from().equals(gauge.from()));
    return Stream.concat(Stream.of(gauge), named).map(Part::id).toList();
  }
}
