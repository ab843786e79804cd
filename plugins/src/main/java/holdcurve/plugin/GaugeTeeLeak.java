package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.fault.Site;
import holdcurve.part.Gauge;
import java.util.List;

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
    return "A damp tee, hose clip or gauge thread; the car itself showed no trouble with starting.";
  }

  @Override
  public String repair() {
    return "Dry the tee and the gauge hose, prime and look; remake the joint and repeat the hold before anything else is taken apart.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return PartSites.of(circuit, Gauge.KIND, Part::from);
  }
}
