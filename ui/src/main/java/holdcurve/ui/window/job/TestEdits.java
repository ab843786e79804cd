package holdcurve.ui.window.job;

import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.LogEvent;
import holdcurve.record.log.TimedEvent;
import java.util.LinkedHashSet;
import java.util.OptionalDouble;
import java.util.Set;

/** Changes of a hold test, each a new test. */
public final class TestEdits {
  private TestEdits() {}

  public static HoldTest named(HoldTest test, String id) {
    return copy(test, id, test.clamped(), test.clampTime(), test.fuelTemperature(), test.log());
  }

  public static HoldTest withLog(HoldTest test, GaugeLog log) {
    return copy(test, test.id(), test.clamped(), test.clampTime(), test.fuelTemperature(), log);
  }

  /** Puts a clamp on a hose, or takes it off. */
  public static HoldTest clamped(HoldTest test, String hose, boolean on) {
    Set<String> hoses = new LinkedHashSet<>(test.clamped());
    if (on) {
      hoses.add(hose);
    } else {
      hoses.remove(hose);
    }
    return copy(test, test.id(), hoses, test.clampTime(), test.fuelTemperature(), test.log());
  }

  /**
   * @param time after the pump stop [s]
   */
  public static HoldTest clampedAt(HoldTest test, double time) {
    return copy(test, test.id(), test.clamped(), time, test.fuelTemperature(), test.log());
  }

  /**
   * @param kelvins of the fuel at the start [K]; empty if not measured
   */
  public static HoldTest withTemperature(HoldTest test, OptionalDouble kelvins) {
    return copy(test, test.id(), test.clamped(), test.clampTime(), kelvins, test.log());
  }

  public static HoldTest dated(HoldTest test, String date) {
    return new HoldTest(
        test.id(),
        test.clamped(),
        test.clampTime(),
        test.primeTime(),
        test.fuelTemperature(),
        test.log(),
        date,
        test.notes());
  }

  public static HoldTest noted(HoldTest test, String notes) {
    return new HoldTest(
        test.id(),
        test.clamped(),
        test.clampTime(),
        test.primeTime(),
        test.fuelTemperature(),
        test.log(),
        test.date(),
        notes);
  }

  private static HoldTest copy(
      HoldTest test,
      String id,
      Set<String> clamped,
      double clampTime,
      OptionalDouble temperature,
      GaugeLog log) {
    return new HoldTest(
        id, clamped, clampTime, test.primeTime(), temperature, log, test.date(), test.notes());
  }

  /**
   * The log with the pump stop elsewhere. Events that said so before are dropped: the person at the
   * window knows better.
   *
   * @param time on the log's own clock [s]
   */
  public static GaugeLog stoppedAt(GaugeLog log, double time) {
    return new GaugeLog(
        log.source(),
        log.readings().stream()
            .map(
                reading ->
                    reading.event().filter(e -> e.kind() == LogEvent.Kind.PUMP_STOP).isPresent()
                        ? new holdcurve.record.log.Reading(
                            reading.time(),
                            reading.pressure(),
                            reading.fuelTemperature(),
                            java.util.Optional.empty(),
                            reading.doubtful())
                        : reading)
            .toList(),
        log.events().stream().filter(TestEdits::isNoStop).toList(),
        time);
  }

  private static boolean isNoStop(TimedEvent event) {
    return event.event().kind() != LogEvent.Kind.PUMP_STOP;
  }
}
