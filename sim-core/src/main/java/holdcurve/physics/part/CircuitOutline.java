package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Property;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A circuit in a few words, for someone who knows no more: tank, pump, check valve, pipe, filter, a
 * hose at each end, a rail with its injectors, and a regulator that spills back to the tank.
 * Whatever isn't said takes its default, as a guess with a wide spread.
 *
 * @param cylinders how many injectors
 * @param pipeLength of the pipe from filter end to engine, the same again on the return [m]
 * @param pipeBore inner diameter of that pipe [m]
 * @param setPressure of the regulator [Pa gauge]
 * @param damper whether a pulsation damper sits on the rail
 * @param coldStart whether a cold-start injector sits on the rail
 */
public record CircuitOutline(
    int cylinders,
    OptionalDouble pipeLength,
    OptionalDouble pipeBore,
    OptionalDouble setPressure,
    boolean damper,
    boolean coldStart) {

  /** The parts, in the order of the flow. */
  public List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    parts.add(place(Tank.KIND, "tank"));
    parts.add(line(Pump.KIND, "pump", "tank", "pump-outlet"));
    parts.add(line(CheckValve.KIND, "check-valve", "pump-outlet", "feed-start"));
    parts.add(pipe("feed-pipe", "feed-start", "feed-pipe-end"));
    parts.add(line(Filter.KIND, "filter", "feed-pipe-end", "filter-outlet"));
    parts.add(line(Hose.KIND, "feed-hose", "filter-outlet", "rail"));
    addRail(parts);
    parts.add(regulator());
    parts.add(line(Hose.KIND, "return-hose", "return-start", "return-pipe-start"));
    parts.add(pipe("return-pipe", "return-pipe-start", "tank"));
    return parts;
  }

  private void addRail(List<Part> parts) {
    parts.add(at(Rail.KIND, "rail-pipe", Map.of()));
    if (damper) {
      parts.add(at(Damper.KIND, "damper", Map.of()));
    }
    parts.add(at(Injector.KIND, "injectors", Map.of(Injector.COUNT, (double) cylinders)));
    if (coldStart) {
      parts.add(at(ColdStartInjector.KIND, "cold-start-injector", Map.of()));
    }
    parts.add(at(Gauge.KIND, "gauge-tee", Map.of()));
    parts.add(at(Joint.KIND, "gauge-tee-joint", Map.of()));
  }

  private Part pipe(String id, String from, String to) {
    Map<Property, Double> given = new HashMap<>();
    pipeLength.ifPresent(length -> given.put(RigidPipe.LENGTH, length));
    pipeBore.ifPresent(bore -> given.put(RigidPipe.BORE, bore));
    return Part.of(RigidPipe.KIND, id, from, to, given);
  }

  private Part regulator() {
    Map<Property, Double> given =
        setPressure.isPresent() ? Map.of(Regulator.SET, setPressure.getAsDouble()) : Map.of();
    return Part.of(Regulator.KIND, "regulator", "rail", "return-start", given);
  }

  private static Part place(PartKind kind, String id) {
    return Part.of(kind, id, id, id, Map.of());
  }

  private static Part line(PartKind kind, String id, String from, String to) {
    return Part.of(kind, id, from, to, Map.of());
  }

  private static Part at(PartKind kind, String id, Map<Property, Double> given) {
    return Part.of(kind, id, "rail", "rail", given);
  }
}
