package holdcurve.bench.flowsheet;

import java.util.Optional;

/**
 * One line of a bench sheet.
 *
 * @param id number or name of the injector
 * @param serial mark on its body, by which it is known again on another day
 * @param before what it did as it came; at least one of the two is there
 * @param after what it did after service
 */
public record BenchInjector(
    String id,
    Optional<String> serial,
    Optional<BenchReadings> before,
    Optional<BenchReadings> after) {
  public BenchInjector {
    if (before.isEmpty() && after.isEmpty()) {
      throw new IllegalArgumentException("injector " + id + " has no readings");
    }
  }

  /** What it is known by on another sheet: its mark, or its number where it has none. */
  public String mark() {
    return serial.orElse(id);
  }

  /**
   * Readings of one state of service. A line that was begun and left empty is no visit to the
   * bench, unless there is nothing else.
   */
  public Optional<BenchReadings> readings(Service state) {
    Optional<BenchReadings> stated = state == Service.BEFORE ? before : after;
    boolean first = state == Service.BEFORE || before.isEmpty();
    boolean nothing =
        before.map(BenchReadings::isEmpty).orElse(true)
            && after.map(BenchReadings::isEmpty).orElse(true);
    return stated.filter(readings -> nothing ? first : !readings.isEmpty());
  }
}
