package holdcurve.hold;

import holdcurve.circuit.Condition;
import holdcurve.circuit.Part;
import holdcurve.model.Network;
import holdcurve.model.NetworkAssembler;
import holdcurve.model.NetworkAssembler.Detail;
import holdcurve.model.NetworkLayout;
import holdcurve.model.Operation;
import holdcurve.ode.LeanRosenbrockDriver;
import holdcurve.ode.RosenbrockMethod;
import holdcurve.ode.Tolerances;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * Computes what the gauge shows after the pump has stopped, fast enough to be asked thousands of
 * times.
 *
 * <p>Connection points joined by open lines are treated as one place ({@link Detail#LUMPED}). Not
 * thread-safe: one simulator a thread.
 */
public final class HoldSimulator {
  /** Relative tolerance that keeps the error well under a millibar. */
  private static final double USUAL_TOLERANCE = 1e-4;

  private final Detail detail;
  private final double tolerance;
  private final BiFunction<Condition, Operation, Network> assembler;
  private final Map<List<Integer>, LeanRosenbrockDriver> drivers = new HashMap<>();

  public HoldSimulator() {
    this(Detail.LUMPED, USUAL_TOLERANCE);
  }

  /**
   * @param tolerance relative tolerance of each step [-]
   */
  public HoldSimulator(Detail detail, double tolerance) {
    this.detail = detail;
    this.tolerance = tolerance;
    this.assembler = NetworkAssembler.repeated(detail);
  }

  /**
   * What the gauge shows.
   *
   * @param times since the pump stopped [s], ascending, the first not negative
   * @return gauge reading without offset or reading error [Pa gauge], one a time
   */
  public double[] readings(Condition condition, HoldSetup setup, double[] times) {
    Network open = assembler.apply(condition, setup.operation());
    double[] y = start(open, condition, setup);
    double end = times[times.length - 1];
    double[] shown = new double[times.length];
    boolean clamps = !setup.clamped().isEmpty() && setup.clampTime() < end;
    double openEnd = clamps ? setup.clampTime() : end;
    run(open, 0, y, openEnd, times, shown);
    if (clamps) {
      Operation held = setup.operation().withClamps(setup.clamped(), setup.clampConductance());
      Network shut = assembler.apply(condition, held);
      double[] state = shut.carryOver(y, open);
      squeeze(shut, state, condition, setup);
      run(shut, openEnd, state, end, times, shown);
    }
    return shown;
  }

  /** Whatever an open way joins to the tank, without a valve between, stands without pressure. */
  private double[] start(Network open, Condition condition, HoldSetup setup) {
    Network lumped =
        detail == Detail.LUMPED
            ? open
            : NetworkAssembler.assemble(condition, setup.operation(), Detail.LUMPED);
    return open.stateAt(
        point -> lumped.layout().node(point).boundary() ? 0 : setup.pressure(),
        setup.soak(),
        setup.warmth());
  }

  private static void squeeze(
      Network network, double[] state, Condition condition, HoldSetup setup) {
    for (String hose : setup.clamped()) {
      Part part = condition.circuit().part(hose);
      push(network, state, part.from(), setup.squeezed());
      push(network, state, part.to(), setup.squeezed());
    }
  }

  private static void push(Network network, double[] state, String point, double volume) {
    var node = network.layout().node(point);
    if (!node.boundary()) {
      state[node.row()] += volume / network.capacity(node.row(), state[node.row()]);
    }
  }

  private void run(
      Network network, double from, double[] y, double to, double[] times, double[] shown) {
    int gauge = network.layout().gaugeRow();
    if (to <= from) {
      return;
    }
    double[][] rows = new double[times.length][y.length];
    driver(network).integrate(network, from, y, to, times, rows);
    for (int i = 0; i < times.length; i++) {
      if (times[i] >= from && times[i] <= to) {
        shown[i] = rows[i][gauge];
      }
    }
  }

  private LeanRosenbrockDriver driver(Network network) {
    NetworkLayout layout = network.layout();
    return drivers.computeIfAbsent(
        List.of(layout.nodes().size(), layout.warmthRow(), layout.gaugeRow(), layout.dimension()),
        rows ->
            new LeanRosenbrockDriver(
                RosenbrockMethod.RODAS4.tableau(),
                Tolerances.relative(tolerance, layout.scales())));
  }
}
