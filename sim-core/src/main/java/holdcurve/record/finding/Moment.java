package holdcurve.record.finding;

import holdcurve.common.input.Require;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When something was looked at, and the pressure under which it was: stated, or that of a hold
 * test, or else that of a circuit just primed.
 *
 * @param test id of the hold test during which it was; empty if outside one
 * @param pressure mean pressure meanwhile [Pa gauge]; absent if not noted
 * @param date the day; absent if not noted
 */
public record Moment(Optional<String> test, OptionalDouble pressure, Optional<LocalDate> date) {
  /** Just primed, nothing else noted. */
  public static final Moment PRIMED = new Moment(Optional.empty(), OptionalDouble.empty());

  /** On a day that wasn't noted. */
  public Moment(Optional<String> test, OptionalDouble pressure) {
    this(test, pressure, Optional.empty());
  }

  public Moment {
    pressure.ifPresent(p -> Require.notNegative(p, "pressure of a finding", "Pa"));
  }

  Moment on(LocalDate day) {
    return new Moment(test, pressure, Optional.of(day));
  }

  /**
   * @param pressure mean pressure meanwhile [Pa gauge]
   */
  public static Moment at(double pressure) {
    return new Moment(Optional.empty(), OptionalDouble.of(pressure));
  }
}
