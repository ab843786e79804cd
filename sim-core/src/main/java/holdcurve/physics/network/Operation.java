package holdcurve.physics.network;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is being done with a circuit during one stretch of a log. Every change of it is a switch at
 * which the integration stops and starts again, so the equations never ask the time.
 *
 * @param pumpRunning whether the pump runs
 * @param clamps hose id → conductance that the clamp leaves [m³/(s·Pa)]
 * @param injectorDuty share of the time that injectors are open [-], 0 with the engine stopped
 * @param manifoldPressure intake manifold [Pa gauge]
 * @param fuelTemperature of the fuel at the start [K]
 * @param temperatureCourse how the fuel temperature changes, where that is given; else it relaxes
 *     to its surroundings
 * @param valves valve id → its state, in a run that follows it; a regulator that isn't named is
 *     open while the pump runs and on its way to its seat when it doesn't
 * @param pace whether pressures change slowly or fast
 */
public record Operation(
    boolean pumpRunning,
    Map<String, Double> clamps,
    double injectorDuty,
    double manifoldPressure,
    double fuelTemperature,
    Optional<TemperatureCourse> temperatureCourse,
    Map<String, ValveState> valves,
    Pace pace) {
  /** 20 °C, where nothing else is known [K]. */
  public static final double ROOM_TEMPERATURE = 293.15;

  public Operation {
    clamps = Map.copyOf(clamps);
    valves = Map.copyOf(valves);
  }

  /** Pump stopped, engine stopped, no clamp. */
  public static Operation holding() {
    return new Operation(
        false, Map.of(), 0, 0, ROOM_TEMPERATURE, Optional.empty(), Map.of(), Pace.SLOW);
  }

  /** Pump running on its bridged relay, engine stopped. */
  public static Operation priming() {
    return holding().withPump(true);
  }

  public Operation withPump(boolean running) {
    return new Operation(
        running,
        clamps,
        injectorDuty,
        manifoldPressure,
        fuelTemperature,
        temperatureCourse,
        valves,
        pace);
  }

  /**
   * A copy in which these hoses, and no others, are clamped so that each lets {@code conductance}
   * [m³/(s·Pa)] past.
   */
  public Operation withClamps(Set<String> hoses, double conductance) {
    Map<String, Double> set = new TreeMap<>();
    hoses.forEach(hose -> set.put(hose, conductance));
    return new Operation(
        pumpRunning,
        set,
        injectorDuty,
        manifoldPressure,
        fuelTemperature,
        temperatureCourse,
        valves,
        pace);
  }

  /**
   * @param duty share of the time that injectors are open [-]
   * @param manifold intake manifold [Pa gauge]
   */
  public Operation withEngine(double duty, double manifold) {
    return new Operation(
        pumpRunning, clamps, duty, manifold, fuelTemperature, temperatureCourse, valves, pace);
  }

  public Operation withFuelTemperature(double kelvin) {
    return new Operation(
        pumpRunning,
        clamps,
        injectorDuty,
        manifoldPressure,
        kelvin,
        temperatureCourse,
        valves,
        pace);
  }

  /** A copy in which the fuel temperature follows a course. */
  public Operation withTemperatureCourse(TemperatureCourse course) {
    return withTemperatureCourse(Optional.of(course));
  }

  /** A copy in which the fuel relaxes to its surroundings. */
  public Operation withoutTemperatureCourse() {
    return withTemperatureCourse(Optional.empty());
  }

  private Operation withTemperatureCourse(Optional<TemperatureCourse> course) {
    return new Operation(
        pumpRunning, clamps, injectorDuty, manifoldPressure, fuelTemperature, course, valves, pace);
  }

  /** A copy in which one valve is in a known state; the others stay as they are. */
  public Operation withValve(String part, ValveState state) {
    Map<String, ValveState> set = new TreeMap<>(valves);
    set.put(part, state);
    return new Operation(
        pumpRunning,
        clamps,
        injectorDuty,
        manifoldPressure,
        fuelTemperature,
        temperatureCourse,
        set,
        pace);
  }

  public Operation at(Pace other) {
    return new Operation(
        pumpRunning,
        clamps,
        injectorDuty,
        manifoldPressure,
        fuelTemperature,
        temperatureCourse,
        valves,
        other);
  }

  /** Whether the other differs from this at most in how hoses are clamped. */
  boolean isLikeButForClamps(Operation other) {
    return this == other
        || pumpRunning == other.pumpRunning
            && injectorDuty == other.injectorDuty
            && manifoldPressure == other.manifoldPressure
            && fuelTemperature == other.fuelTemperature
            && pace == other.pace
            && temperatureCourse.equals(other.temperatureCourse)
            && valves.equals(other.valves);
  }

  /** Whether a part is clamped as in the other. */
  boolean clampsLike(Operation other, String part) {
    if (clamps == other.clamps) {
      return true;
    }
    Double here = clamps.get(part);
    Double there = other.clamps.get(part);
    return here == null ? there == null : here.equals(there);
  }
}
