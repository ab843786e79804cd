package holdcurve.physics.balance;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A fall of the pressure where the gauge is tee'd in, with its parts, which add up to it.
 *
 * @param pressure how far it fell there [Pa]
 * @param shown how far the needle fell [Pa]
 * @param leaks part of each leak of the condition, in order
 * @param others parts of all other causes but the gauge
 */
public record HoldFall(
    double pressure, double shown, List<FallPart> leaks, Map<Cause, FallPart> others) {
  public HoldFall {
    leaks = List.copyOf(leaks);
    others = Map.copyOf(others);
  }

  /**
   * Every cause's part of a fall that was read, the gauge's included: what the reading shows beside
   * the pressure.
   *
   * @param read how far the reading fell [Pa]; the pressures add up to it
   * @param kinds what each of the leaks stands for: a fault may let fuel past without being a leak
   */
  public Map<Cause, FallPart> of(double read, List<Cause> kinds) {
    Map<Cause, FallPart> parts = new EnumMap<>(Cause.class);
    for (Cause cause : Cause.values()) {
      parts.put(cause, others.getOrDefault(cause, FallPart.NONE));
    }
    for (int i = 0; i < leaks.size(); i++) {
      parts.merge(kinds.get(i), leaks.get(i), FallPart::plus);
    }
    parts.put(Cause.GAUGE, new FallPart(read - pressure, 0));
    return parts;
  }
}
