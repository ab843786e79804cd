package holdcurve.physics.balance;

import holdcurve.common.message.AddedUp;
import holdcurve.common.message.PressureUnit;
import java.util.List;
import java.util.stream.IntStream;

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

  /**
   * The parts that are worth a line, with their means as they are shown: they add up to the fall
   * that is shown.
   *
   * @param least parts that never reach this are left out [Pa]
   */
  public List<Shown> shown(double least, PressureUnit unit) {
    List<FallShare> some =
        shares.stream()
            .filter(
                share ->
                    Math.max(Math.abs(share.pressure().low()), Math.abs(share.pressure().high()))
                        >= least)
            .toList();
    double[] means =
        AddedUp.pressures(
            some.stream().map(share -> share.pressure().mean()).toList(), fall(unit), unit);
    return IntStream.range(0, means.length)
        .mapToObj(i -> new Shown(some.get(i), means[i]))
        .toList();
  }

  /** How far the reading fell, between the two readings as they are shown [Pa]. */
  public double fall(PressureUnit unit) {
    return AddedUp.difference(first, last, unit);
  }

  /**
   * A part for a table.
   *
   * @param mean as it is shown [Pa]
   */
  public record Shown(FallShare share, double mean) {
    /** Its cause in plain words. */
    public String title() {
      return share.cause().title(mean);
    }
  }

  /** What a cause took. */
  public FallShare share(Cause cause) {
    return shares.stream().filter(s -> s.cause() == cause).findFirst().orElseThrow();
  }
}
