package example;

import holdcurve.physics.circuit.*;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.part.Hose;
import java.util.List;

/** Fuel sweats through a perished hose all along its length, in proportion to the pressure. */
public final class PorousHose implements LeakFault {
  private static final FaultParameter LEAK =
      new FaultParameter(
          "leak at 2 bar",
          Unit.MILLILITRE_PER_MINUTE,
          new Prior.LogNormal(Unit.MILLILITRE_PER_MINUTE.toSi(0.05), 3),
          "assumed: a damp cover, no drops",
          false);

  @Override
  public String id() {
    return "porous-hose";
  }

  @Override
  public String name() {
    return "Hose sweats fuel";
  }

  @Override
  public String symptoms() {
    return "The hose smells of fuel and feels damp, with no wet end.";
  }

  @Override
  public String repair() {
    return "Renew the hose with one made for injection pressure.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return circuit.partsOf(Hose.KIND).stream()
        .map(hose -> new Site(hose.id(), hose.id(), hose.from(), List.of(hose.id())))
        .toList();
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LEAK);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    LaminarLaw pores = LaminarLaw.throughPoint(parameters[0], Unit.BAR.toSi(2));
    return condition.with(new LeakPath(site.point(), Circuit.AIR, pores));
  }
}
