package holdcurve.physics.hold;

import holdcurve.physics.network.Operation;
import java.util.Set;

/**
 * How a hold begins and what is done to it.
 *
 * @param pressure everywhere between check valve and regulator when the pump stops [Pa gauge]
 * @param soak how long that pressure had stood before, for the hose walls [s]
 * @param warmth fuel temperature over its surroundings when the pump stops [K]
 * @param operation with the pump stopped and no clamp set
 * @param clamped hoses that are clamped
 * @param clampTime when the clamps go on [s]; unused without clamps
 * @param clampConductance what each clamp lets past [m³/(s·Pa)]
 * @param squeezed fuel that setting one clamp pushes to either side [m³]
 */
public record HoldSetup(
    double pressure,
    double soak,
    double warmth,
    Operation operation,
    Set<String> clamped,
    double clampTime,
    double clampConductance,
    double squeezed) {
  public HoldSetup {
    clamped = Set.copyOf(clamped);
  }

  /** A hold without clamps, primed for 20 s, at a steady 20 °C. */
  public static HoldSetup plain(double pressure) {
    return new HoldSetup(pressure, 20, 0, Operation.holding(), Set.of(), 0, 0, 0);
  }

  /** The same hold with clamps that shut tight. */
  public HoldSetup clampedAt(double time, Set<String> hoses) {
    return new HoldSetup(pressure, soak, warmth, operation, hoses, time, 0, 0);
  }
}
