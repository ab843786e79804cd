package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One injector in one state of service, at the pressure and with the fuel of the circuit.
 *
 * @param readings as they stand on the sheet
 * @param staticFlow held open [m³/s]
 * @param departure of its static flow from the median of the set [-]
 * @param pulseDeparture of its flow at the shortest pulse that all were measured at, likewise [-]
 * @param line its dynamic line, where it was measured at two pulse widths or more
 */
public record FlowReport(
    BenchReadings readings,
    OptionalDouble staticFlow,
    Optional<Interval> departure,
    Optional<Interval> pulseDeparture,
    Optional<DynamicLine> line) {

  /** The larger of its departures, which decides; empty if no flow was measured. */
  public Optional<Interval> worst() {
    if (departure.isPresent() && pulseDeparture.isPresent()) {
      return size(departure.get()) >= size(pulseDeparture.get()) ? departure : pulseDeparture;
    }
    return departure.or(() -> pulseDeparture);
  }

  private static double size(Interval departure) {
    return Math.abs(departure.middle());
  }
}
