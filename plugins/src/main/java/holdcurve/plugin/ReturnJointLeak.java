package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.fault.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A joint after the regulator. The regulator keeps the held pressure from it, so no hold shows it
 * unless the regulator leaks too and the return is clamped; it drips while the pump runs.
 */
public final class ReturnJointLeak extends JointLeak {
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
    return "A damp hose end between regulator and tank, or a smell of fuel while the pump runs; the hold is good.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    JointPlaces places = new JointPlaces(circuit);
    Set<Set<String>> pieces = places.returning();
    pieces.removeAll(places.held());
    List<Site> sites = new ArrayList<>();
    pieces.forEach(piece -> sites.addAll(places.site(piece.iterator().next(), piece)));
    return sites;
  }

  @Override
  public boolean showsInHold() {
    return false;
  }
}
