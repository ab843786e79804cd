package holdcurve.record.log;

/**
 * An event and when it happened.
 *
 * @param time time on the log's own clock [s]
 * @param event what happened
 */
public record TimedEvent(double time, LogEvent event) {
  public TimedEvent {
    if (!Double.isFinite(time)) {
      throw new IllegalArgumentException("time of an event: " + time + " s is not finite");
    }
  }
}
