package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.IntStream;

/** The six-cylinder circuit, whole or with a fault, held or with its pump running. */
final class TestStand {
  static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));

  /** Every ten seconds for ten minutes [s]. */
  static final double[] TIMES = IntStream.rangeClosed(0, 60).mapToDouble(i -> 10.0 * i).toArray();

  static final Set<String> NO_CLAMP = Set.of();
  static final Set<String> FEED = Set.of("feed-hose");
  static final Set<String> RETURN = Set.of("return-hose");
  static final Set<String> BOTH = Set.of("feed-hose", "return-hose");

  private TestStand() {}

  static Condition sound() {
    return Condition.sound(CIRCUIT);
  }

  /** The fault at its first site, each parameter at its prior median. */
  static Condition median(LeakFault fault) {
    return with(
        fault,
        fault.parameters().stream()
            .map(FaultParameter::prior)
            .mapToDouble(prior -> prior.at(0))
            .toArray());
  }

  /** The fault at its first site. */
  static Condition with(LeakFault fault, double... parameters) {
    return fault.apply(sound(), fault.sites(CIRCUIT).get(0), parameters);
  }

  static double mLPerMinute(double value) {
    return Unit.MILLILITRE_PER_MINUTE.toSi(value);
  }

  static double bar(double value) {
    return Unit.BAR.toSi(value);
  }

  /** Gauge readings at {@link #TIMES} from 2 bar on [bar]; clamps go on after five seconds. */
  static double[] hold(Condition condition, Set<String> clamped) {
    HoldSetup setup = HoldSetup.plain(bar(2)).clampedAt(5, clamped);
    double[] pascal = new HoldSimulator().readings(condition, setup, TIMES);
    return java.util.Arrays.stream(pascal).map(Unit.BAR::fromSi).toArray();
  }

  /** What the gauge has lost after five minutes [bar]. */
  static double fall(Condition condition, Set<String> clamped) {
    double[] readings = hold(condition, clamped);
    return readings[0] - readings[30];
  }

  /** The law of the only leak. */
  static FlowLaw law(Condition condition) {
    return condition.leaks().get(0).law();
  }

  /** How fast the flow grows with pressure about 1 to 2 bar: n in Q ∝ pⁿ [-]. */
  static double exponent(FlowLaw law) {
    return Math.log(law.flow(bar(2)) / law.flow(bar(1))) / Math.log(2);
  }

  /** Pressure at the rail from rest on, with the pump running [bar]. */
  static double[] running(Condition condition, double duty, double[] times) {
    Network network = network(condition, duty);
    int row = network.layout().node("rail").row();
    return java.util.Arrays.stream(run(network, times))
        .mapToDouble(state -> Unit.BAR.fromSi(state[row]))
        .toArray();
  }

  /** What a boundary has received after some time with the pump running [m³]. */
  static double received(Condition condition, double duty, String boundary, double time) {
    Network network = network(condition, duty);
    return run(network, new double[] {time})[0][network.layout().node(boundary).row()];
  }

  private static Network network(Condition condition, double duty) {
    Operation operation = Operation.priming().withEngine(duty, 0);
    return NetworkAssembler.assemble(condition, operation, Detail.LEDGER);
  }

  private static double[][] run(Network network, double[] times) {
    double[] start = network.stateAt(point -> 0, 0, 0);
    double[][] states = new double[times.length][start.length];
    new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS4.tableau(), Tolerances.relative(1e-5, network.layout().scales()))
        .integrate(network, 0, start, times[times.length - 1], times, states);
    return states;
  }
}
