package holdcurve.bench.flowsheet;

import java.util.Optional;

/**
 * One line of a bench sheet.
 *
 * @param id number or name of the injector
 * @param before what it did as it came; at least one of the two is there
 * @param after what it did after service
 */
public record BenchInjector(
    String id, Optional<BenchReadings> before, Optional<BenchReadings> after) {
  public BenchInjector {
    if (before.isEmpty() && after.isEmpty()) {
      throw new IllegalArgumentException("injector " + id + " has no readings");
    }
  }

  /** Readings of one state of service. */
  public Optional<BenchReadings> readings(Service state) {
    return state == Service.BEFORE ? before : after;
  }
}
