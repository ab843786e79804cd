package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import java.util.Set;

/**
 * A joint after the regulator. The regulator keeps the held pressure from it, so no hold shows it
 * unless the regulator leaks too and the return is clamped; it drips while the pump runs, under the
 * tenth of a bar that the returning fuel needs. What tells it is a joint that is wiped dry and wet
 * again.
 */
public final class ReturnJointLeak extends UnheldJointLeak {
  public ReturnJointLeak() {
    super("leak at 0.1 bar with the pump running");
  }

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
    return "A damp hose end between regulator and tank, or a smell of fuel. The hold is good.";
  }

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Wipe every joint of the return dry, let the pump run and look again. Renew the hose end"
        + " or clamp that turns wet.";
  }

  @Override
  Set<Set<String>> stretches(JointPlaces places) {
    Set<Set<String>> pieces = places.returning();
    pieces.removeAll(places.held());
    return pieces;
  }
}
