package holdcurve.record.log;

import holdcurve.record.log.RowReader.EventLine;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When the pump stopped, by the events. A logger may repeat "pump off" in every line: then the
 * first of them counts. Where the pump ran again in between, the hold begins at the later stop.
 *
 * @param at the event that marks it; empty where none does
 * @param starts number of times the pump stopped after running
 */
record PumpStop(Optional<EventLine> at, int starts) {
  static PumpStop find(List<EventLine> events) {
    EventLine stop = null;
    int stops = 0;
    boolean running = true;
    for (EventLine next : sorted(events)) {
      LogEvent.Kind kind = next.event().event().kind();
      if (kind == LogEvent.Kind.PUMP_STOP && running) {
        stop = next;
        stops++;
      }
      running = kind == LogEvent.Kind.PUMP_ON || running && kind != LogEvent.Kind.PUMP_STOP;
    }
    return new PumpStop(Optional.ofNullable(stop), stops);
  }

  private static List<EventLine> sorted(List<EventLine> events) {
    return events.stream()
        .sorted(Comparator.comparingDouble((EventLine event) -> event.event().time()))
        .toList();
  }

  /** Time of the stop on the log's own clock [s]; zero where no event marks it. */
  double time() {
    return at.map(event -> event.event().time()).orElse(0.0);
  }

  String sentence() {
    return at.map(
            event -> "Pump stop taken from '" + words() + "' in line " + event.line() + again())
        .orElse("Assumed: the pump stopped at 0:00.");
  }

  /** The words that mark it; empty where none do. */
  String words() {
    return at.map(event -> PassedOver.shortened(event.event().event().text())).orElse("");
  }

  private String again() {
    return starts > 1 ? ", the last of " + starts + " pump stops." : ".";
  }
}
