package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Part;
import holdcurve.circuit.Unit;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.flow.OrificeLaw;
import holdcurve.part.Injector;
import java.util.ArrayList;
import java.util.List;

/**
 * Fuel past the needle of one or several injectors: a short annular hole, an orifice with a laminar
 * beginning.
 */
public final class InjectorTipLeak implements LeakFault {
  private static final FaultParameter TRANSITION =
      new FaultParameter(
          "pressure below which the flow is laminar",
          Unit.BAR,
          new Prior.LogNormal(Unit.BAR.toSi(0.3), 5),
          "assumed: gaps of 5 to 50 micrometres between laminar and free outflow",
          false);

  @Override
  public String id() {
    return "injector-tip";
  }

  @Override
  public String name() {
    return "Injector drips at its tip";
  }

  @Override
  public String symptoms() {
    return "Hard hot start, black smoke at first, a smell of fuel from the intake; a wet tip when the injectors are lifted.";
  }

  @Override
  public String repair() {
    return "Lift the injectors with the rail under pressure and count drops at each; clean or replace those that drip.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    List<Site> sites = new ArrayList<>();
    for (Part part : circuit.partsOf(Injector.KIND)) {
      String where = part.value(Injector.COUNT) > 1 ? "one or several of the " : "";
      sites.add(new Site(part.id(), where + part.id(), part.from(), List.of(part.id())));
    }
    return sites;
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.4, true), TRANSITION);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    OrificeLaw tip = OrificeLaw.throughPoint(parameters[0], LeakSizes.TEST_PRESSURE, parameters[1]);
    return condition.with(new LeakPath(site.point(), Circuit.MANIFOLD, tip));
  }
}
