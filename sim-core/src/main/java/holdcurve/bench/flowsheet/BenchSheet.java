package holdcurve.bench.flowsheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bench sheet: a set of injectors and what the bench showed.
 *
 * @param title what the owner calls it
 * @param benchBefore the bench as the injectors came; the other one again if there was but one
 * @param benchAfter the bench after service
 * @param ratedFlow static flow that the maker states, carried over to the bench after service
 *     [m³/s]
 * @param serviced day of the service
 * @param measured day on the bench, where it isn't that of the service
 * @param injectors in the order of the sheet, at least one
 * @param understood what was made of the file, in plain sentences
 */
public record BenchSheet(
    String title,
    Bench benchBefore,
    Bench benchAfter,
    OptionalDouble ratedFlow,
    Optional<LocalDate> serviced,
    Optional<LocalDate> measured,
    List<BenchInjector> injectors,
    List<String> understood) {
  /** Format and version that bench sheets carry. */
  public static final String FORMAT = "holdcurve-bench-sheet/1";

  public BenchSheet {
    injectors = List.copyOf(injectors);
    understood = List.copyOf(understood);
    if (injectors.isEmpty()) {
      throw new IllegalArgumentException("a bench sheet needs an injector");
    }
  }

  /** The day that its readings are of. */
  public Optional<LocalDate> day() {
    return measured.or(() -> serviced);
  }

  /** The bench of one state of service. */
  public Bench bench(Service state) {
    return state == Service.BEFORE ? benchBefore : benchAfter;
  }

  /** The state that counts now: after service, if anything was measured then. */
  public Service latest() {
    return has(Service.AFTER) ? Service.AFTER : Service.BEFORE;
  }

  /** Whether any injector was measured in that state. */
  public boolean has(Service state) {
    return injectors.stream()
        .anyMatch(injector -> injector.readings(state).filter(r -> !r.isEmpty()).isPresent());
  }
}
