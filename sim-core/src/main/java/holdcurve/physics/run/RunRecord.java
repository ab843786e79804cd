package holdcurve.physics.run;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;

/**
 * What a run showed. Arrays are the record's own: callers leave them as they are.
 *
 * @param times since the pump stop, ascending; negative before it [s]
 * @param gauge reading without offset or reading error [Pa gauge], one a time
 * @param pressures connection point → pressure there [Pa gauge], one a time
 * @param events switches and valves, in order of time
 */
public record RunRecord(
    double[] times, double[] gauge, Map<String, double[]> pressures, List<RunEvent> events) {
  public RunRecord {
    pressures = Map.copyOf(pressures);
    events = List.copyOf(events);
  }

  /**
   * Pressure at a connection point [Pa gauge], one a time.
   *
   * @throws NoSuchElementException if the circuit has no such point
   */
  public double[] at(String point) {
    double[] pressure = pressures.get(point);
    if (pressure == null) {
      throw new NoSuchElementException("no connection point '" + point + "' in this run");
    }
    return pressure;
  }
}
