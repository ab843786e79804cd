package holdcurve.inference.runup;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.NetworkLayout;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Filter;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Regulator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Computes what the gauge shows before the pump stops, fast enough to be asked thousands of times:
 * lumped as for holds, but while the pump runs for the filter and whatever line a fault narrows,
 * and with nothing stored between them. A test holds it against the full network. Not thread-safe:
 * one a thread.
 */
public final class RunUpSimulator {
  private final NetworkAssembler running;
  private final NetworkAssembler standing;
  private final Set<String> pressurised;
  private final String gauge;

  /**
   * @param faulty ids of parts whose resistance a fault has changed
   */
  public RunUpSimulator(Circuit circuit, Set<String> faulty) {
    running = NetworkAssembler.lumpedBut(kept(circuit, faulty));
    standing = NetworkAssembler.lumpedBut(faulty);
    gauge = circuit.partsOf(Gauge.KIND).get(0).id();
    NetworkLayout held =
        NetworkAssembler.assemble(Condition.sound(circuit), Operation.holding(), Detail.LUMPED)
            .layout();
    pressurised =
        circuit.points().stream()
            .filter(point -> !held.node(point).boundary())
            .collect(Collectors.toSet());
  }

  private static Set<String> kept(Circuit circuit, Set<String> faulty) {
    Set<String> kept = new HashSet<>(faulty);
    circuit.partsOf(Filter.KIND).forEach(filter -> kept.add(filter.id()));
    return kept;
  }

  /**
   * What the gauge shows.
   *
   * @param on when the pump begins to deliver, on the clock of the stages [s]
   * @param pressure that the circuit has then [Pa gauge]
   * @param stages what pump and injectors do; the first may begin before {@code on}
   * @param fuelTemperature [K]
   * @param times on the same clock, ascending [s]; the gauge stands still before {@code on}
   * @return reading without offset or reading error [Pa gauge], one a time
   */
  public double[] readings(
      Condition condition,
      double on,
      double pressure,
      List<RunUp.Stage> stages,
      double fuelTemperature,
      double[] times) {
    double lag = condition.circuit().part(gauge).value(Gauge.LAG);
    LaggingNeedle needle = new LaggingNeedle(lag, times, on, pressure);
    Map<Operation, QuasiSteady> circuits = new HashMap<>();
    double reached = pressure;
    for (RunUp.Stage stage : stages) {
      if (on < stage.to()) {
        Operation operation = RunUp.operation(stage, fuelTemperature);
        QuasiSteady circuit =
            circuits.computeIfAbsent(operation, done -> circuit(condition, done, pressure));
        reached = needle.follow(PressureCourse.from(circuit, reached), stage.to());
      }
    }
    return needle.shown();
  }

  /**
   * What the gauge shows once a running circuit has come to rest [Pa gauge].
   *
   * @param operation with the pump running
   */
  double settled(Condition condition, Operation operation) {
    double near = condition.circuit().partsOf(Regulator.KIND).get(0).value(Regulator.SET) + NEAR;
    return PressureCourse.rest(circuit(condition, operation, near), near).gauge();
  }

  /** Somewhat above what a regulator is set to, most circuits come to rest [Pa]. */
  private static final double NEAR = 1e4;

  private QuasiSteady circuit(Condition condition, Operation operation, double pressure) {
    NetworkAssembler assembler = operation.pumpRunning() ? running : standing;
    Network network = assembler.assemble(condition, operation);
    return new QuasiSteady(
        network, network.stateAt(point -> pressurised.contains(point) ? pressure : 0, 0, 0));
  }
}
