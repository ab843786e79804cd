package holdcurve.record.finding;

import java.time.LocalDate;
import java.util.Optional;

/** A finding of one moment: what was seen or counted while the circuit stood under pressure. */
public sealed interface SeenAtMoment extends Finding
    permits JointLook, DropCount, ReferenceHoseLook {
  /** Under which pressure, in which test, on which day. */
  Moment when();

  @Override
  default Optional<String> test() {
    return when().test();
  }

  @Override
  default Optional<LocalDate> date() {
    return when().date();
  }
}
