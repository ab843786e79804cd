package holdcurve.finding;

import holdcurve.check.Require;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pressure under which something was looked at: stated, or that of a hold test, or else that of
 * a circuit just primed.
 *
 * @param test id of the hold test during which it was; empty if outside one
 * @param pressure mean pressure meanwhile [Pa gauge]; absent if not noted
 */
public record Moment(Optional<String> test, OptionalDouble pressure) {
  /** Just primed, nothing else noted. */
  public static final Moment PRIMED = new Moment(Optional.empty(), OptionalDouble.empty());

  public Moment {
    pressure.ifPresent(p -> Require.notNegative(p, "pressure of a finding", "Pa"));
  }

  /**
   * @param pressure mean pressure meanwhile [Pa gauge]
   */
  public static Moment at(double pressure) {
    return new Moment(Optional.empty(), OptionalDouble.of(pressure));
  }
}
