package holdcurve.bench.droptest;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import holdcurve.physics.part.Injector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Does a drop test on a simulated circuit: primes, reads, opens one injector, waits, reads, primes
 * again. For practice and for checking what is made of such readings.
 */
public final class DropTestSimulator {
  private static final double TOLERANCE = 1e-6;

  /** For how long the pump runs before each firing: common practice [s]. */
  private static final double PRIMING = 20;

  /** From pump stop to the reading before: common practice [s]. */
  private static final double SETTLING = 3;

  /** Unsteadiness of the eye, as a share of the gauge's step: assumed [-]. */
  private static final double UNSTEADY = 0.3;

  /** The spray holes are turbulent but for the last hundredths of a bar: assumed [Pa]. */
  private static final double SPRAY_TRANSITION = 2e3;

  private final Condition condition;
  private final DropPlan plan;
  private final RandomGenerator random;
  private final Network idle;
  private final LeanRosenbrockDriver driver;

  private DropTestSimulator(Condition condition, DropPlan plan, long seed) {
    this.condition = condition;
    this.plan = plan;
    this.random = new Well19937c(seed);
    this.idle = network(condition);
    this.driver =
        new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS4P2.tableau(),
            Tolerances.relative(TOLERANCE, idle.layout().scales()));
  }

  /**
   * @param condition the circuit as it really is
   * @param share flow of each injector as a share of what the circuit states [-]
   * @param seed of priming, firing and eye; the same seed reads the same
   * @throws java.util.NoSuchElementException if the circuit has no injectors
   */
  public static DropTest simulate(Condition condition, double[] share, DropPlan plan, long seed) {
    return new DropTestSimulator(condition, plan, seed).run(share);
  }

  private static Network network(Condition condition) {
    return NetworkAssembler.assemble(condition, Operation.holding(), Detail.LUMPED);
  }

  private DropTest run(double[] share) {
    List<Firing> firings = new ArrayList<>();
    for (int repeat = 0; repeat < plan.repeats(); repeat++) {
      for (int i = 0; i < share.length; i++) {
        firings.add(fire(Integer.toString(i + 1), share[i]));
      }
    }
    return new DropTest(
        "simulated",
        plan.resolution(),
        plan.shot(),
        firings,
        List.of(idleFall()),
        Optional.empty(),
        List.of());
  }

  private Firing fire(String id, double share) {
    double[] y = primed();
    double before = read(y);
    double open = plan.shot().openTime() * (1 + PassedPosterior.FIRING * random.nextGaussian());
    advance(network(condition.with(spray(share))), y, open);
    advance(idle, y, Math.max(0.1, plan.shot().pause() - open));
    return new Firing(id, before, read(y));
  }

  private LeakPath spray(double share) {
    Circuit circuit = condition.circuit();
    Part injectors = circuit.partsOf(Injector.KIND).stream().findFirst().orElseThrow();
    double flow = share * injectors.value(Injector.STATIC_FLOW);
    return new LeakPath(
        injectors.from(),
        Circuit.MANIFOLD,
        OrificeLaw.throughPoint(flow, injectors.value(Injector.RATED), SPRAY_TRANSITION));
  }

  private IdleFall idleFall() {
    double[] y = primed();
    double before = read(y);
    advance(idle, y, plan.idleTime());
    return new IdleFall(before, read(y), plan.idleTime());
  }

  private double[] primed() {
    double pressure = plan.primed() + plan.primingScatter() * random.nextGaussian();
    double[] y =
        idle.stateAt(point -> idle.layout().node(point).boundary() ? 0 : pressure, PRIMING, 0);
    advance(idle, y, SETTLING);
    return y;
  }

  private void advance(Network network, double[] y, double time) {
    driver.integrate(network, 0, y, time, new double[0], new double[0][]);
  }

  private double read(double[] y) {
    double seen =
        y[idle.layout().gaugeRow()] + UNSTEADY * plan.resolution() * random.nextGaussian();
    return Math.max(0, Math.rint(seen / plan.resolution()) * plan.resolution());
  }
}
