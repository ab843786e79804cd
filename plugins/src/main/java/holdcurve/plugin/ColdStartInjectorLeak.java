package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.ColdStartInjector;
import java.util.List;

/**
 * The extra injector for cold starts drips into the intake. A gauge can't tell it from the others.
 */
public final class ColdStartInjectorLeak extends TipLeak {
  @Override
  public String id() {
    return "cold-start-injector";
  }

  @Override
  public String name() {
    return "Cold-start injector drips";
  }

  @Override
  public String symptoms() {
    return "Rich at every temperature and worst when hot: all plugs sooty alike, high consumption,"
        + " a start that floods. Its bore in the intake is wet.";
  }

  @Override
  public String repair() {
    return Cautions.of(Caution.NOTHING_FIRES, Caution.INJECTORS_HELD)
        + " Relieve the pressure, unscrew it with its hose on, hold it in a jar, prime, and watch"
        + " for a minute. Clean or replace it if a drop falls.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return PartSites.of(circuit, ColdStartInjector.KIND, Part::from);
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.3, true), TRANSITION);
  }
}
