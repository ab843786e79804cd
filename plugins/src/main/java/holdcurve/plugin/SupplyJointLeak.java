package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.OrificeLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A joint between the tank and the check valve, or the tank itself. The check valve keeps the held
 * pressure from it, so no hold shows it; only a joint that was found wet speaks for it.
 */
public final class SupplyJointLeak implements LeakFault {
  /** What the level in the tank gives, or a filter before the pump takes, in order of size [Pa]. */
  private static final double SUPPLY_PRESSURE = 1e4;

  private static final FaultParameter LEAK =
      new FaultParameter(
          "leak at 0.1 bar",
          Unit.MILLILITRE_PER_MINUTE,
          new Prior.LogNormal(Unit.MILLILITRE_PER_MINUTE.toSi(0.3), 3),
          "assumed: below 0.03 mL/min it dries off, above 3 it runs and is put right at once",
          true);

  @Override
  public String id() {
    return "supply-side-joint";
  }

  @Override
  public String name() {
    return "Joint leaks between tank and check valve";
  }

  @Override
  public String symptoms() {
    return "A damp hose end at tank or pump, or a smell of fuel there; the hold is good.";
  }

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Wipe the joints at tank and pump dry, let the pump run and look again; renew the hose"
        + " end, union or clamp that turns wet.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    JointPlaces places = new JointPlaces(circuit);
    List<Site> sites = new ArrayList<>();
    for (Set<String> piece : places.supplying()) {
      sites.addAll(places.siteWithTank(piece.iterator().next(), piece));
    }
    return sites;
  }

  @Override
  public boolean showsInHold() {
    return false;
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LEAK);
  }

  /** A slack or scored end, laminar up to about the pressure that there is. */
  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    OrificeLaw gap = OrificeLaw.throughPoint(parameters[0], SUPPLY_PRESSURE, SUPPLY_PRESSURE / 2);
    return condition.with(new LeakPath(site.point(), Circuit.AIR, gap));
  }
}
