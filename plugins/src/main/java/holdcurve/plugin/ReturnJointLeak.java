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
 * A joint after the regulator. The regulator keeps the held pressure from it, so no hold shows it
 * unless the regulator leaks too and the return is clamped; it drips while the pump runs, under the
 * tenth of a bar that the returning fuel needs. What tells it is a joint that is wiped dry and wet
 * again.
 */
public final class ReturnJointLeak implements LeakFault {
  /** What a return of a few metres takes at 2 L/min, to within a factor of two [Pa]. */
  private static final double RETURN_PRESSURE = 1e4;

  private static final FaultParameter LEAK =
      new FaultParameter(
          "leak at 0.1 bar with the pump running",
          Unit.MILLILITRE_PER_MINUTE,
          new Prior.LogNormal(Unit.MILLILITRE_PER_MINUTE.toSi(0.3), 3),
          "assumed: below 0.03 mL/min it dries off, above 3 it runs and is put right at once",
          true);

  @Override
  public String id() {
    return "return-side-joint";
  }

  @Override
  public String name() {
    return "Joint leaks in the return";
  }

  @Override
  public String symptoms() {
    return "A damp hose end between regulator and tank, or a smell of fuel while the pump runs; the"
        + " hold is good.";
  }

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Wipe every joint of the return dry, let the pump run and look again; renew the hose end"
        + " or clamp that turns wet.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    JointPlaces places = new JointPlaces(circuit);
    Set<Set<String>> pieces = places.returning();
    pieces.removeAll(places.held());
    List<Site> sites = new ArrayList<>();
    pieces.forEach(piece -> sites.addAll(places.siteWithTank(piece.iterator().next(), piece)));
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
    OrificeLaw gap = OrificeLaw.throughPoint(parameters[0], RETURN_PRESSURE, RETURN_PRESSURE / 2);
    return condition.with(new LeakPath(site.point(), Circuit.AIR, gap));
  }
}
