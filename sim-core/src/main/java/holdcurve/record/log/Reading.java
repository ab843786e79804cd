package holdcurve.record.log;

import java.util.Optional;

/**
 * One line of a gauge log.
 *
 * @param time time on the log's own clock [s]
 * @param pressure pressure above the surrounding air, as the gauge showed it [Pa]
 * @param fuelTemperature fuel temperature [K]; NaN where it was not measured
 * @param event what happened at that moment, if anything was written
 * @param doubtful true where the person marked the value as uncertain
 */
public record Reading(
    double time,
    double pressure,
    double fuelTemperature,
    Optional<LogEvent> event,
    boolean doubtful) {

  public Reading {
    if (!Double.isFinite(time)) {
      throw new IllegalArgumentException("time of a reading: " + time + " s is not finite");
    }
    if (!Double.isFinite(pressure)) {
      throw new IllegalArgumentException("pressure of a reading: " + pressure + " Pa not finite");
    }
    if (Double.isInfinite(fuelTemperature) || fuelTemperature <= 0) {
      throw new IllegalArgumentException("fuel temperature: " + fuelTemperature + " K");
    }
  }

  /**
   * A plain reading without temperature or event.
   *
   * @param time [s]
   * @param pressure [Pa]
   */
  public static Reading of(double time, double pressure) {
    return new Reading(time, pressure, Double.NaN, Optional.empty(), false);
  }

  /** Whether the fuel temperature was measured with this reading. */
  public boolean hasTemperature() {
    return !Double.isNaN(fuelTemperature);
  }

  /**
   * The same reading on a clock that starts later.
   *
   * @param zero time on this clock that becomes zero [s]
   */
  Reading since(double zero) {
    return new Reading(time - zero, pressure, fuelTemperature, event, doubtful);
  }
}
