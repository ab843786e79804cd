package holdcurve.physics.balance;

import java.util.List;

/**
 * Where the fall of one hold test went.
 *
 * @param test id of the hold test
 * @param from time of its first reading, since the pump stopped [s]
 * @param to time of its last reading [s]
 * @param first first reading [Pa gauge]
 * @param last last reading [Pa gauge]
 * @param shares one a cause; the means of their pressures add up to the fall that was read
 * @param leaks of the likeliest explanations, likeliest first
 */
public record FallReport(
    String test,
    double from,
    double to,
    double first,
    double last,
    List<FallShare> shares,
    List<LeakShare> leaks) {
  public FallReport {
    shares = List.copyOf(shares);
    leaks = List.copyOf(leaks);
  }

  /** How far the reading fell [Pa]. */
  public double fall() {
    return first - last;
  }

  /** What a cause took. */
  public FallShare share(Cause cause) {
    return shares.stream().filter(s -> s.cause() == cause).findFirst().orElseThrow();
  }
}
