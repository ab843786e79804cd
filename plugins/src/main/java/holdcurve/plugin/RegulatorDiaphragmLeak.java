package holdcurve.plugin;

import holdcurve.common.caution.Caution;
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
 * Fuel through a cracked diaphragm into the spring chamber and out by its hose to the manifold (or,
 * without a hose, to the air, which with the engine stopped is the same pressure). It passes the
 * regulator's seat by, so clamping the return doesn't stop it.
 */
public final class RegulatorDiaphragmLeak implements LeakFault {
  private static final FaultParameter TRANSITION =
      LeakSizes.transition(0.5, 8, "from a torn diaphragm (runs) to a porous one (seeps)");

  @Override
  public String id() {
    return "regulator-diaphragm";
  }

  @Override
  public String name() {
    return "Regulator diaphragm leaks into its hose";
  }

  @Override
  public String symptoms() {
    return "Fuel in the thin hose between regulator and manifold, or a smell of it at the"
        + " regulator's vent. Rich running, black smoke, a flooded start.";
  }

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Prime, stop the pump, pull the thin hose off the regulator: if it is wet inside,"
        + " replace the regulator. Don't run the engine until then.";
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
    OrificeLaw crack =
        OrificeLaw.throughPoint(parameters[0], LeakSizes.TEST_PRESSURE, parameters[1]);
    return condition.with(new LeakPath(site.point(), Circuit.MANIFOLD, crack));
  }
}
