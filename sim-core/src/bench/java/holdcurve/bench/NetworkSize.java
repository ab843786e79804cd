package holdcurve.bench;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.fluid.Fluids;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.StiffRun;
import holdcurve.physics.ode.Tolerances;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Rail;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a hold costs when a circuit has more connection points, all of them kept as nodes: a line of
 * hoses with a rail at every second joint, a side branch at every fifth, and a leak at the end.
 */
final class NetworkSize {
  private static final int[] SIZES = {10, 30, 60};
  private static final double[] TIMES = {10, 60, 300, 600};

  private record Cost(int nodes, int states, int steps, double time) {}

  private NetworkSize() {}

  static void print() {
    List<Cost> costs = new ArrayList<>();
    for (int nodes : SIZES) {
      costs.add(cost(nodes));
    }
    System.out.println("\nA hold of 600 s against the size of the network, every point a node");
    System.out.println("| nodes | states | steps | time [µs] | for each step [µs] |");
    System.out.println("|---|---|---|---|---|");
    for (Cost c : costs) {
      System.out.printf(
          Locale.ROOT,
          "| %d | %d | %d | %.0f | %.1f |%n",
          c.nodes,
          c.states,
          c.steps,
          c.time,
          c.time / c.steps);
    }
    Picture.Series sizes = new Picture.Series("nodes", "µs");
    costs.forEach(c -> sizes.add(c.nodes, c.time));
    Picture.add("A hold against nodes", sizes);
    double power = Math.log(costs.get(2).time / costs.get(1).time) / Math.log(2);
    System.out.printf(
        Locale.ROOT,
        "60 nodes over 30: %.1f times, power %.2f of the size%n",
        Math.pow(2, power),
        power);
  }

  private static Cost cost(int nodes) {
    Network network = NetworkAssembler.assemble(condition(nodes), Operation.holding(), Detail.FULL);
    LeanRosenbrockDriver driver =
        new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS4P2.tableau(),
            Tolerances.relative(1e-4, network.layout().scales()));
    double[][] rows = new double[TIMES.length][network.getDimension()];
    StiffRun run = run(driver, network, rows);
    double time = Clock.fastest(() -> run(driver, network, rows));
    return new Cost(
        network.layout().nodes().size(),
        network.getDimension(),
        run.accepted() + run.rejected(),
        time);
  }

  private static StiffRun run(LeanRosenbrockDriver driver, Network network, double[][] rows) {
    double[] y = network.stateAt(point -> 2e5, 20, 1);
    return driver.integrate(network, 0, y, 600, TIMES, rows);
  }

  private static Condition condition(int nodes) {
    List<Part> parts = new ArrayList<>();
    parts.add(Part.of(Gauge.KIND, "gauge", "p0", "p0", Map.of()));
    for (int i = 1; i < nodes; i++) {
      String from = "p" + (i % 5 == 0 ? i - 2 : i - 1);
      parts.add(
          Part.of(Hose.KIND, "hose-" + i, from, "p" + i, Map.of(Hose.LENGTH, 0.4 + 0.01 * i)));
      if (i % 2 == 0) {
        parts.add(Part.of(Rail.KIND, "rail-" + i, "p" + i, "p" + i, Map.of()));
      }
    }
    Circuit circuit = new Circuit("a line of hoses", Fluids.byId("petrol").orElseThrow(), parts);
    LaminarLaw law = LaminarLaw.throughPoint(nodes * 1e-9, 2e5);
    return Condition.sound(circuit).with(new LeakPath("p" + (nodes - 1), Circuit.AIR, law));
  }
}
