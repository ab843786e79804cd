package holdcurve.record.job;

import holdcurve.record.log.GaugeLog;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * One hold: the pump ran, stopped, and the gauge was watched.
 *
 * @param id unique in the job, such as "feed clamped"
 * @param clamped ids of the hoses that were clamped
 * @param clampTime when the clamps went on, after the pump stopped [s]
 * @param primeTime how long the pump had run [s]
 * @param fuelTemperature of the fuel at the start [K]; absent if not measured
 * @param log readings
 * @param date when it was done, as written, best as 2026-04-11; may be empty
 * @param notes free text; may be empty
 */
public record HoldTest(
    String id,
    Set<String> clamped,
    double clampTime,
    double primeTime,
    OptionalDouble fuelTemperature,
    GaugeLog log,
    String date,
    String notes) {
  public HoldTest {
    clamped = Collections.unmodifiableSet(new TreeSet<>(clamped));
  }

  /** A hold with everything else as usual: clamps after 5 s, 20 s of priming. */
  public static HoldTest of(String id, Set<String> clamped, GaugeLog log) {
    return new HoldTest(id, clamped, 5, 20, OptionalDouble.empty(), log, "", "");
  }

  /** The day it was done; empty if none is written, or not as year-month-day. */
  public Optional<LocalDate> day() {
    try {
      return Optional.of(LocalDate.parse(date));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
