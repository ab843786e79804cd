package holdcurve.physics.run;

import holdcurve.common.input.Require;
import holdcurve.physics.network.Operation;
import holdcurve.physics.network.Region;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * One stretch of a run, begun by a switch.
 *
 * @param name what a person would call it, such as "pump stops"
 * @param duration [s], above zero
 * @param change what the switch does to the operation before it
 * @param warming by how much each region's surroundings get warmer at the switch [K]
 */
public record RunStep(
    String name, double duration, UnaryOperator<Operation> change, Map<Region, Double> warming) {
  public RunStep {
    Objects.requireNonNull(name);
    Require.positive(duration, "duration of '" + name + "'", "s");
    Objects.requireNonNull(change);
    warming = Map.copyOf(warming);
  }

  private RunStep(String name, double duration, UnaryOperator<Operation> change) {
    this(name, duration, change, Map.of());
  }

  /** Nothing is touched. */
  public static RunStep rest(double duration) {
    return new RunStep("rest", duration, UnaryOperator.identity());
  }

  /** The pump runs on its bridged relay, the engine stands. */
  public static RunStep prime(double duration) {
    return new RunStep("pump on", duration, before -> before.withPump(true).withEngine(0, 0));
  }

  /**
   * The engine runs.
   *
   * @param duty share of the time that injectors are open [-]: idle about 0.05, full load 0.8
   * @param manifold intake manifold [Pa gauge]: idle about −0.6e5, full load near 0
   */
  public static RunStep engine(double duration, double duty, double manifold) {
    Require.within(duty, 0, 1, "injector duty", "-");
    return new RunStep(
        "engine runs", duration, before -> before.withPump(true).withEngine(duty, manifold));
  }

  /** Pump and engine stop. */
  public static RunStep stop(double duration) {
    return new RunStep("pump stops", duration, before -> before.withPump(false).withEngine(0, 0));
  }

  /**
   * These hoses, and no others, are clamped.
   *
   * @param conductance what each clamp lets past [m³/(s·Pa)]
   */
  public static RunStep clamp(double duration, Set<String> hoses, double conductance) {
    return new RunStep(
        "clamp on " + String.join(", ", hoses.stream().sorted().toList()),
        duration,
        before -> before.withClamps(hoses, conductance));
  }

  /** The same step, with surroundings that get warmer at its beginning, as in a hot soak [K]. */
  public RunStep warming(Region region, double kelvin) {
    Map<Region, Double> all = new EnumMap<>(Region.class);
    all.putAll(warming);
    all.put(region, kelvin);
    return new RunStep(name, duration, change, all);
  }
}
