package holdcurve.inference.ranking;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.LaminarLaw;
import java.util.List;

/**
 * A leak in proportion to pressure, as gas leaves through pores; its size known to a factor of 8.
 */
record GasHole() implements LeakFault {
  private static final double STATED_AT = 2e5;

  @Override
  public String id() {
    return "hole";
  }

  @Override
  public String name() {
    return "The chamber leaks";
  }

  @Override
  public String symptoms() {
    return "It empties.";
  }

  @Override
  public String repair() {
    return "Print it closer.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return List.of(new Site("chamber", "its wall", "inside", List.of("chamber")));
  }

  @Override
  public List<FaultParameter> parameters() {
    Prior size = new Prior.LogNormal(Unit.MILLILITRE_PER_MINUTE.toSi(0.02), 8);
    return List.of(
        new FaultParameter("leak at 2 bar", Unit.MILLILITRE_PER_MINUTE, size, "assumed", true));
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    LaminarLaw law = LaminarLaw.throughPoint(parameters[0], STATED_AT);
    return condition.with(new LeakPath(site.point(), Circuit.AIR, law));
  }
}
