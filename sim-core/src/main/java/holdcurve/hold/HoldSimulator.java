package holdcurve.hold;

import holdcurve.circuit.Condition;
import holdcurve.circuit.Part;
import holdcurve.model.Network;
import holdcurve.model.NetworkAssembler;
import holdcurve.model.NetworkAssembler.Detail;
import holdcurve.model.NetworkLayout;
import holdcurve.model.Operation;
import holdcurve.model.VariedNetwork;
import holdcurve.ode.LeanRosenbrockDriver;
import holdcurve.ode.RosenbrockMethod;
import holdcurve.ode.TangentDriver;
import holdcurve.ode.Tolerances;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * Computes what the gauge shows after the pump has stopped, fast enough to be asked thousands of
 * times.
 *
 * <p>Connection points joined by open lines are treated as one place ({@link Detail#LUMPED}). Not
 * thread-safe: one simulator a thread.
 */
public final class HoldSimulator {
  private static final RosenbrockMethod METHOD = RosenbrockMethod.RODAS4P2;

  /**
   * Of 228 holds drawn over all faults, against a tolerance of 1e-9: error 0.2 mbar root mean
   * square, 5 mbar at worst, in 29 steps. Five times looser saves a quarter of the steps and gives
   * 0.5 and 10 mbar; RODAS4 is about as good, RODAS5P worse.
   */
  private static final double USUAL_TOLERANCE = 1e-4;

  private final Detail detail;
  private final double tolerance;
  private final BiFunction<Condition, Operation, Network> assembler;
  private final Map<List<Integer>, LeanRosenbrockDriver> drivers = new HashMap<>();
  private final Map<List<Integer>, TangentDriver> tangentDrivers = new HashMap<>();

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
    Hold hold = new Hold(condition, setup);
    Network open = open(hold);
    double[] y = start(open, hold);
    double end = times[times.length - 1];
    double[] shown = new double[times.length];
    boolean clamps = clamps(setup, end);
    double openEnd = clamps ? setup.clampTime() : end;
    run(open, 0, y, openEnd, times, shown);
    if (clamps) {
      Network shut = shut(hold);
      run(shut, openEnd, clamp(open, y, shut, hold), end, times, shown);
    }
    return shown;
  }

  /**
   * What the gauge shows, and its derivatives by parameters: all from one run, see {@link
   * TangentDriver}.
   *
   * @param moved for each parameter the hold with that parameter a step further
   * @param step of each parameter, small [unit of the parameter]
   * @param times as for {@link #readings}
   */
  public HoldSlopes slopes(Hold base, List<Hold> moved, double step, double[] times) {
    double end = times[times.length - 1];
    boolean clamps = clamps(base.setup(), end);
    Family open = family(base, moved, this::open, HoldSimulator::openAlike);
    Family shut = clamps ? family(base, moved, this::shut, HoldSimulator::shutAlike) : open;
    if (!open.isAlike() || !shut.isAlike()) {
      return differences(base, moved, step, times);
    }
    Tangents state = new Tangents(start(open.base(), base), moved.size(), step);
    for (int k = 0; k < moved.size(); k++) {
      state.setMoved(k, start(open.moved().get(k), moved.get(k)));
    }
    HoldSlopes result =
        new HoldSlopes(new double[times.length], new double[times.length][moved.size()]);
    double openEnd = clamps ? base.setup().clampTime() : end;
    run(open, 0, state, openEnd, times, result);
    if (clamps) {
      Tangents held =
          new Tangents(clamp(open.base(), state.y(), shut.base(), base), moved.size(), step);
      for (int k = 0; k < moved.size(); k++) {
        Network from = open.moved().get(k);
        held.setMoved(k, clamp(from, state.moved(k), shut.moved().get(k), moved.get(k)));
      }
      run(shut, openEnd, held, end, times, result);
    }
    return result;
  }

  /** For parameters that change which states there are. */
  private HoldSlopes differences(Hold base, List<Hold> moved, double step, double[] times) {
    double[] shown = readings(base.condition(), base.setup(), times);
    double[][] slopes = new double[times.length][moved.size()];
    for (int k = 0; k < moved.size(); k++) {
      double[] other = readings(moved.get(k).condition(), moved.get(k).setup(), times);
      for (int i = 0; i < times.length; i++) {
        slopes[i][k] = (other[i] - shown[i]) / step;
      }
    }
    return new HoldSlopes(shown, slopes);
  }

  /** A network and those it is compared with. */
  private record Family(Network base, List<Network> moved) {
    boolean isAlike() {
      return moved.stream().allMatch(base::hasStatesOf);
    }
  }

  /**
   * Networks of all holds; where a hold surely has the network of the base, it is taken as it is.
   */
  private static Family family(
      Hold base,
      List<Hold> moved,
      Function<Hold, Network> assembler,
      BiPredicate<Hold, Hold> alike) {
    Network network = assembler.apply(base);
    List<Network> others = new ArrayList<>(moved.size());
    for (Hold hold : moved) {
      others.add(alike.test(base, hold) ? network : assembler.apply(hold));
    }
    return new Family(network, others);
  }

  private static boolean openAlike(Hold a, Hold b) {
    return a.condition() == b.condition() && a.setup().operation() == b.setup().operation();
  }

  private static boolean shutAlike(Hold a, Hold b) {
    return openAlike(a, b) && a.setup().clampConductance() == b.setup().clampConductance();
  }

  private static boolean clamps(HoldSetup setup, double end) {
    return !setup.clamped().isEmpty() && setup.clampTime() < end;
  }

  private Network open(Hold hold) {
    return assembler.apply(hold.condition(), hold.setup().operation());
  }

  private Network shut(Hold hold) {
    HoldSetup setup = hold.setup();
    return assembler.apply(
        hold.condition(), setup.operation().withClamps(setup.clamped(), setup.clampConductance()));
  }

  private static double[] clamp(Network open, double[] y, Network shut, Hold hold) {
    double[] state = shut.carryOver(y, open);
    squeeze(shut, state, hold.condition(), hold.setup());
    return state;
  }

  /** Whatever an open way joins to the tank, without a valve between, stands without pressure. */
  private double[] start(Network open, Hold hold) {
    HoldSetup setup = hold.setup();
    Network lumped =
        detail == Detail.LUMPED
            ? open
            : NetworkAssembler.assemble(hold.condition(), setup.operation(), Detail.LUMPED);
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

  private void run(
      Family family, double from, Tangents state, double to, double[] times, HoldSlopes result) {
    if (to <= from) {
      return;
    }
    NetworkLayout layout = family.base().layout();
    tangentDriver(layout, family.moved().size())
        .integrate(
            new VariedNetwork(family.base(), family.moved(), state.step()),
            from,
            state.y(),
            state.s(),
            to,
            times,
            layout.gaugeRow(),
            result.shown(),
            result.slopes());
  }

  private TangentDriver tangentDriver(NetworkLayout layout, int parameters) {
    return tangentDrivers.computeIfAbsent(
        List.of(
            layout.nodes().size(),
            layout.warmthRow(),
            layout.gaugeRow(),
            layout.dimension(),
            parameters),
        key ->
            new TangentDriver(
                METHOD.tableau(), Tolerances.relative(tolerance, layout.scales()), parameters));
  }

  private LeanRosenbrockDriver driver(Network network) {
    NetworkLayout layout = network.layout();
    return drivers.computeIfAbsent(
        List.of(layout.nodes().size(), layout.warmthRow(), layout.gaugeRow(), layout.dimension()),
        rows ->
            new LeanRosenbrockDriver(
                METHOD.tableau(), Tolerances.relative(tolerance, layout.scales())));
  }
}
