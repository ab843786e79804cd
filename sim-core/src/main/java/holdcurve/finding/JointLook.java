package holdcurve.finding;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A look at the outside of a part under pressure.
 *
 * @param part id of the part whose joint, vent or body was looked at; empty where every part was
 *     looked at and none was wet
 * @param end connection point at which of its ends; empty for any
 * @param wet whether fuel was seen
 * @param when under which pressure
 */
public record JointLook(Optional<String> part, Optional<String> end, boolean wet, Moment when)
    implements SeenAtMoment {
  public JointLook {
    if (part.isEmpty() && (wet || end.isPresent())) {
      throw new IllegalArgumentException("a look that found fuel, or at one end, names its part");
    }
  }

  /** A look at a part as a whole, the circuit just primed. */
  public static JointLook of(String part, boolean wet) {
    return new JointLook(Optional.of(part), Optional.empty(), wet, Moment.PRIMED);
  }

  /** No part was wet, the circuit just primed. */
  public static JointLook allDry() {
    return new JointLook(Optional.empty(), Optional.empty(), false, Moment.PRIMED);
  }

  @Override
  public JointLook on(LocalDate day) {
    return new JointLook(part, end, wet, when.on(day));
  }

  @Override
  public String inWords() {
    String where = part.orElse("every joint") + end.map(e -> " at " + e).orElse("");
    return where + (wet ? " wet" : " dry");
  }
}
