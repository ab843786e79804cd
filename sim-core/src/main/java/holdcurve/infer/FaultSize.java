package holdcurve.infer;

import holdcurve.circuit.Unit;

/**
 * How bad a fault is, as far as the readings tell.
 *
 * @param name plain words, such as "leak at 2 bar"
 * @param unit unit to show it in
 * @param value with its 90 % range [SI]
 */
public record FaultSize(String name, Unit unit, Interval value) {
  /** Whether it is a loss of fuel [m³/s]. */
  public boolean isLeak() {
    return unit == Unit.MILLILITRE_PER_MINUTE;
  }
}
