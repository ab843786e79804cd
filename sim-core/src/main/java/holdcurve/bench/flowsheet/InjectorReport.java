package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;
import java.util.List;
import java.util.Optional;

/**
 * What the sheet says of one injector.
 *
 * @param id number or name
 * @param serial mark on its body
 * @param before as it came
 * @param after after service
 * @param gain flow that the service brought, as a share of what it was [-]
 * @param standing where it stands now
 * @param sure whether the whole 90 % interval of its departure lies on one side of the limit for a
 *     service
 * @param troubles drip, spray or coil that shouldn't be, each in a few words
 */
public record InjectorReport(
    String id,
    Optional<String> serial,
    Optional<FlowReport> before,
    Optional<FlowReport> after,
    Optional<Interval> gain,
    Standing standing,
    boolean sure,
    List<String> troubles) {
  public InjectorReport {
    troubles = List.copyOf(troubles);
  }

  /** The state that counts: after service if it was measured then. */
  public FlowReport now() {
    return after.or(() -> before).orElseThrow();
  }

  /** What it is known by on another sheet: its mark, or its number where it has none. */
  public String mark() {
    return serial.orElse(id);
  }

  /** What is to be done with it. */
  public Fitness fitness() {
    return Fitness.of(standing, sure, !troubles.isEmpty(), after.isPresent());
  }

  /** Whether its flow lies surely beyond the limit for a service. */
  boolean isOut() {
    return sure && standing != Standing.IN_LINE && standing != Standing.NOT_MEASURED;
  }

  /** Whether its flow lies too close to the limit to call. */
  boolean isOpen() {
    return !sure && standing != Standing.NOT_MEASURED;
  }

  /** Its flow report in a state of service. */
  public Optional<FlowReport> flow(Service state) {
    return state == Service.BEFORE ? before : after;
  }
}
