package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.part.Regulator;
import java.util.List;

/**
 * Fuel past the shut regulator into the return: dirt or a score holds a gap open, whatever the
 * pressure. A seat that leaks only while little load is on it, just below the set pressure, is
 * {@link RegulatorLowReseat}; real ones lie between the two.
 */
public final class RegulatorSeatLeak implements LeakFault {
  private static final FaultParameter TRANSITION =
      LeakSizes.transition(0.5, 8, "from a score (runs) to a film under dirt (seeps)");

  @Override
  public String id() {
    return "regulator-seat";
  }

  @Override
  public String name() {
    return "Regulator leaks into the return";
  }

  @Override
  public String symptoms() {
    return "Pressure sinks after the pump stops, and all is dry. It stays up while the return"
        + " hose is clamped.";
  }

  @Override
  public String repair() {
    return "Flush the regulator. If it still leaks, replace it.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return PartSites.of(circuit, Regulator.KIND, Part::from);
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.5, true), TRANSITION);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    OrificeLaw seat =
        OrificeLaw.throughPoint(parameters[0], LeakSizes.TEST_PRESSURE, parameters[1]);
    String downstream = condition.circuit().part(site.id()).to();
    return condition.with(new LeakPath(site.point(), downstream, seat));
  }
}
