package holdcurve.bench.flowsheet;

import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a bench sheet says.
 *
 * @param sheet the sheet
 * @param point pressure and fuel that flows are stated at
 * @param latest the state of service that counts now
 * @param before static flows as they came
 * @param after static flows after service
 * @param pulse shortest pulse that all were measured at now [s]
 * @param gain mean of what the service brought [-]
 * @param flowLeft mean flow now as a share of what the maker states [-]
 * @param injectors one a line of the sheet
 * @param headline the most important of it
 * @param more sentences beside the headline's
 * @param notes what was understood and assumed
 */
public record BenchReport(
    BenchSheet sheet,
    FlowPoint point,
    Service latest,
    Optional<SetFlow> before,
    Optional<SetFlow> after,
    OptionalDouble pulse,
    Optional<Interval> gain,
    Optional<Interval> flowLeft,
    List<InjectorReport> injectors,
    BenchHeadline headline,
    List<Message> more,
    List<Message> notes) {
  /** Format and version that reports carry. */
  public static final String FORMAT = "holdcurve-bench-report/1";

  public BenchReport {
    injectors = List.copyOf(injectors);
    more = List.copyOf(more);
    notes = List.copyOf(notes);
  }

  /** All sentences: those that bear the headline out, then the others. */
  public List<Message> verdict() {
    return Stream.concat(headline.said().stream(), more.stream()).toList();
  }

  /** Static flows of a state of service. */
  public Optional<SetFlow> set(Service state) {
    return state == Service.BEFORE ? before : after;
  }

  /** Whether every injector can go back as it is. */
  public boolean allGood() {
    return injectors.stream()
        .allMatch(i -> i.standing() == Standing.IN_LINE && i.troubles().isEmpty());
  }
}
