package holdcurve.record.log;

import java.util.Comparator;
import java.util.List;

/**
 * The readings of one hold test.
 *
 * @param source file or other origin, as the user named it
 * @param readings in order of time, equal times allowed; unmodifiable
 * @param events everything that happened, in order of time: the events of the readings and those
 *     noted without a reading; unmodifiable
 * @param pumpStop when the pump stopped, on the log's own clock [s]
 */
public record GaugeLog(
    String source, List<Reading> readings, List<TimedEvent> events, double pumpStop) {

  public GaugeLog {
    readings = List.copyOf(readings);
    events = events.stream().sorted(Comparator.comparingDouble(TimedEvent::time)).toList();
    if (!Double.isFinite(pumpStop)) {
      throw new IllegalArgumentException("pump stop: " + pumpStop + " s is not finite");
    }
    requireSorted(readings);
  }

  /**
   * A log whose only events stand beside readings.
   *
   * @param pumpStop [s]
   */
  public GaugeLog(String source, List<Reading> readings, double pumpStop) {
    this(source, readings, eventsOf(readings), pumpStop);
  }

  private static void requireSorted(List<Reading> readings) {
    double last = Double.NEGATIVE_INFINITY;
    for (Reading reading : readings) {
      if (reading.time() < last) {
        throw new IllegalArgumentException(
            "readings must be in order of time: " + reading.time() + " s follows " + last + " s");
      }
      last = reading.time();
    }
  }

  static List<TimedEvent> eventsOf(List<Reading> readings) {
    return readings.stream()
        .flatMap(r -> r.event().map(event -> new TimedEvent(r.time(), event)).stream())
        .toList();
  }

  /** Readings at or after the pump stop, on a clock that is zero at the pump stop [s]. */
  public List<Reading> hold() {
    return sincePumpStop(readings.subList(beforeStop(), readings.size()));
  }

  /** How many readings there are before the pump stop. */
  public int beforeStop() {
    int from = 0;
    int to = readings.size();
    while (from < to) {
      int middle = (from + to) / 2;
      if (readings.get(middle).time() < pumpStop) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }

  private List<Reading> sincePumpStop(List<Reading> some) {
    return pumpStop == 0 ? some : some.stream().map(r -> r.since(pumpStop)).toList();
  }

  /** Readings before the pump stop; zero is the pump stop, so their times are negative [s]. */
  public List<Reading> buildUp() {
    return sincePumpStop(readings.subList(0, beforeStop()));
  }

  /** The whole log on a clock that is zero at the pump stop. */
  public GaugeLog fromPumpStop() {
    if (pumpStop == 0) {
      return this;
    }
    return new GaugeLog(
        source,
        sincePumpStop(readings),
        events.stream().map(e -> new TimedEvent(e.time() - pumpStop, e.event())).toList(),
        0);
  }

  /** Whether at least one reading of the hold has a fuel temperature. */
  public boolean hasTemperature() {
    return readings.stream().anyMatch(r -> r.time() >= pumpStop && r.hasTemperature());
  }

  /** Time from the first to the last reading [s]; 0 for fewer than two. */
  public double span() {
    return readings.isEmpty()
        ? 0
        : readings.get(readings.size() - 1).time() - readings.get(0).time();
  }

  /** Time from the pump stop to the last reading [s]; 0 where none follows the pump stop. */
  public double holdSpan() {
    return readings.isEmpty()
        ? 0
        : Math.max(0, readings.get(readings.size() - 1).time() - pumpStop);
  }
}
