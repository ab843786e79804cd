package holdcurve.physics.hold;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.NetworkLayout;
import holdcurve.physics.network.NetworkVariant;
import holdcurve.physics.network.Node;
import holdcurve.physics.network.Operation;
import holdcurve.physics.network.PressureLimit;
import holdcurve.physics.network.SimulationException;
import holdcurve.physics.network.StateTransfer;
import holdcurve.physics.network.VariedNetwork;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.StiffIntegrationException;
import holdcurve.physics.ode.TangentDriver;
import holdcurve.physics.ode.Tolerances;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

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
   * Of 304 holds drawn over all faults, against a tolerance of 1e-8: the largest error of a hold is
   * 0.04 mbar root mean square and 0.1 mbar at worst. A gauge shows ten.
   */
  private static final double USUAL_TOLERANCE = 2e-4;

  /**
   * How much tighter the tolerance is where sensitivities are asked for: error control doesn't see
   * them, and in a step across a damper's hard stop they come out wrong by their own size [-].
   */
  private static final double FOR_SLOPES = 0.1;

  private final Detail detail;
  private final double tolerance;
  private final NetworkAssembler assembler;
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
    this.assembler = new NetworkAssembler(detail);
  }

  /**
   * What the gauge shows.
   *
   * @param times since the pump stopped [s], ascending, the first not negative
   * @return gauge reading without offset or reading error [Pa gauge], one a time
   * @throws SimulationException if the equations can't be followed, or a pressure passes {@link
   *     PressureLimit#MOST} at one of the times; of lumped networks only the gauge is asked, so
   *     that a stiff corner of a circuit ends no fit
   */
  public double[] readings(Condition condition, HoldSetup setup, double[] times) {
    Hold hold = new Hold(condition, setup);
    Network open = open(hold);
    double[] y = start(NetworkVariant.same(open), hold, pressurised(open, hold));
    double end = times[times.length - 1];
    double[] shown = new double[times.length];
    boolean clamps = clamps(setup, end);
    double openEnd = clamps ? setup.clampTime() : end;
    run(hold, open, 0, y, openEnd, times, shown);
    if (clamps) {
      Network shut = shut(hold);
      double[] held =
          clamp(
              NetworkVariant.same(open),
              y,
              NetworkVariant.same(shut),
              StateTransfer.between(open, shut),
              hold);
      run(hold, shut, openEnd, held, end, times, shown);
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
  public HoldSensitivities sensitivities(Hold base, List<Hold> moved, double step, double[] times) {
    double end = times[times.length - 1];
    boolean clamps = clamps(base.setup(), end);
    Family open = family(open(base), base, moved, this::openVariant);
    Family shut = clamps ? family(shut(base), base, moved, this::shutVariant) : open;
    if (open == null || shut == null) {
      return differences(base, moved, step, times);
    }
    ToDoubleFunction<String> share = pressurised(open.base(), base);
    StateSensitivities state =
        new StateSensitivities(
            start(NetworkVariant.same(open.base()), base, share), moved.size(), step);
    for (int k = 0; k < moved.size(); k++) {
      state.setMoved(k, start(open.moved().get(k), moved.get(k), share));
    }
    HoldSensitivities result =
        new HoldSensitivities(new double[times.length], new double[times.length][moved.size()]);
    double openEnd = clamps ? base.setup().clampTime() : end;
    run(open, 0, state, openEnd, times, result);
    if (clamps) {
      run(shut, openEnd, clamp(open, state, shut, base, moved), end, times, result);
    }
    return result;
  }

  private static StateSensitivities clamp(
      Family open, StateSensitivities state, Family shut, Hold base, List<Hold> moved) {
    StateTransfer transfer = StateTransfer.between(open.base(), shut.base());
    double[] y =
        clamp(
            NetworkVariant.same(open.base()),
            state.y(),
            NetworkVariant.same(shut.base()),
            transfer,
            base);
    StateSensitivities held = new StateSensitivities(y, moved.size(), state.step());
    for (int k = 0; k < moved.size(); k++) {
      NetworkVariant from = open.moved().get(k);
      NetworkVariant to = shut.moved().get(k);
      held.setMoved(k, clamp(from, state.moved(k), to, transfer, moved.get(k)));
    }
    return held;
  }

  /** For parameters that change which states there are. */
  private HoldSensitivities differences(Hold base, List<Hold> moved, double step, double[] times) {
    double[] shown = readings(base.condition(), base.setup(), times);
    double[][] sensitivities = new double[times.length][moved.size()];
    for (int k = 0; k < moved.size(); k++) {
      double[] other = readings(moved.get(k).condition(), moved.get(k).setup(), times);
      for (int i = 0; i < times.length; i++) {
        sensitivities[i][k] = (other[i] - shown[i]) / step;
      }
    }
    return new HoldSensitivities(shown, sensitivities);
  }

  /** A network and its variants. */
  private record Family(Network base, List<NetworkVariant> moved) {}

  /** Null if a hold's states are others than the base's. */
  private static Family family(Network network, Hold base, List<Hold> moved, Variation variation) {
    List<NetworkVariant> variants = new ArrayList<>(moved.size());
    for (Hold hold : moved) {
      NetworkVariant variant = variation.of(network, base, hold);
      if (variant == null) {
        return null;
      }
      variants.add(variant);
    }
    return new Family(network, variants);
  }

  private interface Variation {
    NetworkVariant of(Network network, Hold base, Hold moved);
  }

  private NetworkVariant openVariant(Network network, Hold base, Hold moved) {
    return openAlike(base, moved)
        ? NetworkVariant.same(network)
        : NetworkVariant.of(network, moved.condition(), moved.setup().operation(), assembler);
  }

  private NetworkVariant shutVariant(Network network, Hold base, Hold moved) {
    return shutAlike(base, moved)
        ? NetworkVariant.same(network)
        : NetworkVariant.of(network, moved.condition(), held(moved.setup()), assembler);
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
    return assembler.assemble(hold.condition(), hold.setup().operation());
  }

  private Network shut(Hold hold) {
    return assembler.assemble(hold.condition(), held(hold.setup()));
  }

  private static Operation held(HoldSetup setup) {
    return setup.operation().withClamps(setup.clamped(), setup.clampConductance());
  }

  private static double[] clamp(
      NetworkVariant open, double[] y, NetworkVariant shut, StateTransfer transfer, Hold hold) {
    double[] state = shut.carryOver(y, open, transfer);
    for (String hose : hold.setup().clamped()) {
      Part part = hold.condition().circuit().part(hose);
      push(shut, state, part.from(), hold.setup().squeezed());
      push(shut, state, part.to(), hold.setup().squeezed());
    }
    return state;
  }

  private static void push(NetworkVariant network, double[] state, String point, double volume) {
    Node node = network.node(point);
    if (!node.boundary()) {
      state[node.row()] += volume / network.capacity(node.row(), state[node.row()]);
    }
  }

  /** Whatever an open way joins to the tank, without a valve between, stands without pressure. */
  private ToDoubleFunction<String> pressurised(Network open, Hold hold) {
    NetworkLayout lumped =
        detail == Detail.LUMPED
            ? open.layout()
            : NetworkAssembler.assemble(hold.condition(), hold.setup().operation(), Detail.LUMPED)
                .layout();
    return point -> lumped.node(point).boundary() ? 0 : 1;
  }

  private static double[] start(NetworkVariant open, Hold hold, ToDoubleFunction<String> share) {
    HoldSetup setup = hold.setup();
    return open.stateAt(
        point -> setup.pressure() * share.applyAsDouble(point), setup.soak(), setup.warmth());
  }

  private void run(
      Hold hold,
      Network network,
      double from,
      double[] y,
      double to,
      double[] times,
      double[] shown) {
    int gauge = network.layout().gaugeRow();
    if (to <= from) {
      return;
    }
    double[][] rows = new double[times.length][y.length];
    try {
      driver(network).integrate(network, from, y, to, times, rows);
    } catch (StiffIntegrationException e) {
      throw SimulationException.of(e, hold.condition().circuit().title(), network);
    }
    for (int i = 0; i < times.length; i++) {
      if (times[i] >= from && times[i] <= to) {
        shown[i] = rows[i][gauge];
        if (detail != Detail.LUMPED || shown[i] > PressureLimit.MOST) {
          PressureLimit.check(hold.condition().circuit().title(), network, times[i], rows[i]);
        }
      }
    }
  }

  private void run(
      Family family,
      double from,
      StateSensitivities state,
      double to,
      double[] times,
      HoldSensitivities result) {
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
            result.shown(),
            result.sensitivities());
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
                METHOD.tableau(),
                Tolerances.relative(FOR_SLOPES * tolerance, layout.scales()),
                parameters,
                layout.gaugeRow()));
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
