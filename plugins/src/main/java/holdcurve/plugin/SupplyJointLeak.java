package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import java.util.Set;

/**
 * A joint between the tank and the check valve, or the tank itself. The check valve keeps the held
 * pressure from it, so no hold shows it; only a joint that was found wet speaks for it.
 */
public final class SupplyJointLeak extends UnheldJointLeak {
  public SupplyJointLeak() {
    super("leak at 0.1 bar");
  }

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
    return "A damp hose end at tank or pump, or a smell of fuel there. The hold is good.";
  }

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Wipe the joints at tank and pump dry, let the pump run and look again. Renew the hose"
        + " end, union or clamp that turns wet.";
  }

  @Override
  Set<Set<String>> stretches(JointPlaces places) {
    return places.supplying();
  }
}
