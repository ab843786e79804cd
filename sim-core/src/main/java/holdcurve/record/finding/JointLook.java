package holdcurve.record.finding;

import holdcurve.common.message.PartName;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A look at the outside of a part under pressure.
 *
 * @param part id of the part whose joint, vent or body was looked at; empty where every part was
 *     looked at and none was wet
 * @param end connection point at which of its ends; empty for any
 * @param wet whether fuel was seen
 * @param wiped whether it had been wiped dry and the circuit primed again before the look, so that
 *     spilt fuel is no excuse
 * @param when under which pressure
 */
public record JointLook(
    Optional<String> part, Optional<String> end, boolean wet, boolean wiped, Moment when)
    implements SeenAtMoment {
  public JointLook {
    if (part.isEmpty() && (wet || end.isPresent())) {
      throw new IllegalArgumentException("a look that found fuel, or at one end, names its part");
    }
  }

  /** A look before which nothing had been wiped. */
  public JointLook(Optional<String> part, Optional<String> end, boolean wet, Moment when) {
    this(part, end, wet, false, when);
  }

  /** A look at a part as a whole, the circuit just primed. */
  public static JointLook of(String part, boolean wet) {
    return new JointLook(Optional.of(part), Optional.empty(), wet, Moment.PRIMED);
  }

  /** No part was wet, the circuit just primed. */
  public static JointLook allDry() {
    return new JointLook(Optional.empty(), Optional.empty(), false, Moment.PRIMED);
  }

  /** The same, seen after it was wiped dry and the circuit primed again. */
  public JointLook afterWiping() {
    return new JointLook(part, end, wet, true, when);
  }

  @Override
  public JointLook on(LocalDate day) {
    return new JointLook(part, end, wet, wiped, when.on(day));
  }

  @Override
  public String inWords() {
    String where =
        part.map(PartName::of).orElse("every joint")
            + end.map(e -> " at " + PartName.of(e)).orElse("");
    String seen = wet ? " wet" : " dry";
    return where + seen + (wiped ? (wet ? " again after wiping" : " after wiping") : "");
  }
}
