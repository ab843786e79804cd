package holdcurve.plugin;

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

/** A joint that a valve keeps the held pressure from, so that no hold shows it. */
abstract class UnheldJointLeak implements LeakFault {
  /**
   * To within a factor of two, what the level in the tank gives, what a filter before the pump
   * takes, and what a return of a few metres takes at 2 L/min [Pa].
   */
  private static final double PRESSURE = 1e4;

  private final FaultParameter leak;

  /**
   * @param size name of the only parameter
   */
  UnheldJointLeak(String size) {
    leak =
        new FaultParameter(
            size,
            Unit.MILLILITRE_PER_MINUTE,
            new Prior.LogNormal(Unit.MILLILITRE_PER_MINUTE.toSi(0.3), 3),
            "assumed: below 0.03 mL/min it dries off, above 3 it runs and is put right at once",
            true);
  }

  /** Stretches of line whose joints these are. */
  abstract Set<Set<String>> stretches(JointPlaces places);

  @Override
  public final List<Site> sites(Circuit circuit) {
    JointPlaces places = new JointPlaces(circuit);
    List<Site> sites = new ArrayList<>();
    for (Set<String> stretch : stretches(places)) {
      sites.addAll(places.siteWithTank(stretch.iterator().next(), stretch));
    }
    return sites;
  }

  @Override
  public final boolean showsInHold() {
    return false;
  }

  @Override
  public final List<FaultParameter> parameters() {
    return List.of(leak);
  }

  /** A slack or scored end, laminar up to about the pressure that there is. */
  @Override
  public final Condition apply(Condition condition, Site site, double[] parameters) {
    OrificeLaw gap = OrificeLaw.throughPoint(parameters[0], PRESSURE, PRESSURE / 2);
    return condition.with(new LeakPath(site.point(), Circuit.AIR, gap));
  }
}
