package holdcurve.inference.answer;

import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.physics.circuit.Unit;

/**
 * How bad a fault is, as far as the readings tell.
 *
 * @param name plain words, such as "leak at 2 bar"; a pressure in it is given in bar
 * @param unit unit to show it in
 * @param value with its 90 % range [SI]
 */
public record FaultSize(String name, Unit unit, Interval value) {
  /** The name, its pressures in the reader's unit. */
  public Message words() {
    return Message.stated(name);
  }

  /** Whether it is a loss of fuel [m³/s]. */
  public boolean isLeak() {
    return unit == Unit.MILLILITRE_PER_MINUTE;
  }
}
