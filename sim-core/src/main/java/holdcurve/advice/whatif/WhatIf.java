package holdcurve.advice.whatif;

import holdcurve.common.input.Cancellation;
import holdcurve.common.number.Interval;
import holdcurve.common.work.ComputationException;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.evidence.WeightedDraws;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Pump;
import holdcurve.record.job.HoldTest;
import holdcurve.record.limit.PassLimit;
import holdcurve.record.log.GaugeLog;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.Well19937c;

/**
 * Asks many ways that a circuit may be what a change would do to it. The same draws stand before
 * and after, so that their difference is the change's own.
 */
public final class WhatIf {
  private static final int HOLDS = 200;
  private static final int QUICK_HOLDS = 40;
  private static final int RUNS = 20;
  private static final double[] USUAL_TIMES = {
    0, 5, 10, 20, 30, 45, 60, 90, 120, 180, 240, 300, 360, 420, 480, 540, 600
  };

  private final List<Weighted> holds;
  private final List<Weighted> runs;
  private final Function<Circuit, PassLimit> limit;

  /** One a thread: it knows how the circuit is joined from the first draw on. */
  private final ThreadLocal<HoldSimulator> simulators = ThreadLocal.withInitial(HoldSimulator::new);

  /**
   * @param posterior what is believed of the circuit
   * @param limit pass limit of a circuit, such as {@code PassLimit::usual}
   * @param seed of the random numbers; the same seed gives the same answer
   */
  public WhatIf(
      List<HypothesisPosterior> posterior, Function<Circuit, PassLimit> limit, long seed) {
    this(posterior, limit, seed, HOLDS);
  }

  private WhatIf(
      List<HypothesisPosterior> posterior,
      Function<Circuit, PassLimit> limit,
      long seed,
      int holdDraws) {
    this.holds = Weighted.of(posterior, holdDraws, seed);
    this.runs = Weighted.of(posterior, RUNS, seed);
    this.limit = limit;
  }

  /** With few draws, for holds that follow a slider. */
  public static WhatIf quick(
      List<HypothesisPosterior> posterior, Function<Circuit, PassLimit> limit, long seed) {
    return new WhatIf(posterior, limit, seed, QUICK_HOLDS);
  }

  /**
   * @param title of the job or circuit
   * @param circuit as described, for the pass limit
   */
  public Comparison compare(String title, Circuit circuit, Change change) {
    return new Comparison(
        title,
        change.what(),
        outlook(circuit, Change.none()),
        outlook(circuit, change),
        notes(circuit, change));
  }

  /** What a reader of a comparison should know; may be empty. */
  public static List<String> notes(Circuit circuit, Change change) {
    Fluid fluid = change.circuit().apply(circuit).fluid();
    return change.fuelTemperature().stream()
        .filter(kelvins -> Boiling.keptBelow(fluid, kelvins) < kelvins)
        .mapToObj(kelvins -> Boiling.note(fluid, kelvins))
        .toList();
  }

  /** What is to be expected after a change. */
  public Outlook outlook(Circuit circuit, Change change) {
    WeightedDraws engine = engine(change);
    return new Outlook(
        hold(circuit, change),
        interval(engine, 0),
        interval(engine, 1),
        interval(engine, 2),
        interval(engine, 3));
  }

  /** Likewise, the hold alone. */
  public HoldOutlook hold(Circuit circuit, Change change) {
    PassLimit least = limit.apply(change.circuit().apply(circuit));
    double[] times = times(least);
    WeightedDraws curves = curves(change, times);
    int place = place(times, least.time());
    return new HoldOutlook(
        curve(curves, times), least, curves.mean(c -> c[place] >= least.pressure() ? 1 : 0));
  }

  private WeightedDraws curves(Change change, double[] times) {
    return asked(
        holds,
        draw -> {
          Hold hold = hold(draw, change);
          return simulators.get().readings(hold.condition(), hold.setup(), times);
        });
  }

  private WeightedDraws engine(Change change) {
    double temperature = change.fuelTemperature().orElse(Operation.ROOM_TEMPERATURE);
    return asked(
        runs,
        draw -> {
          Condition condition = condition(draw, change);
          Fluid fluid = condition.circuit().fluid();
          EngineRun run = EngineRun.of(condition, Boiling.keptBelow(fluid, temperature));
          return new double[] {run.buildUp(), run.primed(), run.idle(), run.fullLoad()};
        });
  }

  /** Draws whose simulation fails are left out. */
  private static WeightedDraws asked(List<Weighted> draws, Function<Weighted, double[]> question) {
    double[][] answers = new double[draws.size()][];
    Thread asker = Thread.currentThread();
    IntStream.range(0, answers.length)
        .parallel()
        .filter(i -> !asker.isInterrupted())
        .forEach(i -> answers[i] = answer(draws.get(i), question));
    Cancellation.check();
    List<double[]> points = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (int i = 0; i < answers.length; i++) {
      if (answers[i] != null) {
        points.add(answers[i]);
        weights.add(draws.get(i).weight());
      }
    }
    if (points.isEmpty()) {
      throw new IllegalStateException("the changed circuit can't be simulated");
    }
    return new WeightedDraws(points, weights.stream().mapToDouble(w -> w).toArray());
  }

  private static double[] answer(Weighted draw, Function<Weighted, double[]> question) {
    try {
      return question.apply(draw);
    } catch (ComputationException e) {
      return null;
    }
  }

  private static Condition condition(Weighted draw, Change change) {
    return change
        .adds()
        .apply(
            draw.posteriorDraw()
                .condition(
                    circuit -> Unstated.spread(change.circuit().apply(circuit), draw.seed()),
                    member -> !change.cures().test(member)));
  }

  /** A hold without clamps after the change. */
  static Hold hold(Weighted draw, Change change) {
    HoldTest test =
        new HoldTest(
            "hold",
            Set.of(),
            5,
            20,
            change.fuelTemperature(),
            new GaugeLog("none", List.of(), 0),
            "",
            "");
    Hold hold =
        draw.posteriorDraw()
            .hold(
                change.circuit(),
                test,
                member -> !change.cures().test(member),
                new Well19937c(draw.seed()));
    Condition condition = change.adds().apply(hold.condition());
    return new Hold(condition, begun(hold.setup(), condition.circuit(), change.warmth()));
  }

  /** A pump can't start a hold higher than it can push. */
  private static HoldSetup begun(HoldSetup setup, Circuit circuit, OptionalDouble warmth) {
    double push =
        circuit.partsOf(Pump.KIND).stream()
            .mapToDouble(WhatIf::push)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    return new HoldSetup(
        Math.min(setup.pressure(), push),
        setup.soak(),
        warmth.orElse(setup.warmth()),
        warmth.isPresent() ? setup.operation().withoutTemperatureCourse() : setup.operation(),
        setup.clamped(),
        setup.clampTime(),
        setup.clampConductance(),
        setup.squeezed());
  }

  private static double push(Part pump) {
    return Math.min(pump.value(Pump.STALL), pump.value(Pump.RELIEF));
  }

  private static double[] times(PassLimit least) {
    TreeSet<Double> times = new TreeSet<>();
    for (double time : USUAL_TIMES) {
      times.add(time);
    }
    times.add(least.time());
    return times.stream().mapToDouble(t -> t).toArray();
  }

  private static int place(double[] times, double time) {
    return java.util.Arrays.binarySearch(times, time);
  }

  private static HoldCurve curve(WeightedDraws curves, double[] times) {
    return new HoldCurve(
        "hold",
        times,
        quantile(curves, times, 0.5),
        quantile(curves, times, 0.05),
        quantile(curves, times, 0.95));
  }

  private static double[] quantile(WeightedDraws curves, double[] times, double share) {
    double[] quantile = new double[times.length];
    java.util.Arrays.setAll(quantile, k -> curves.quantile(curve -> curve[k], share));
    return quantile;
  }

  private static Interval interval(WeightedDraws draws, int k) {
    return new Interval(
        draws.quantile(run -> run[k], 0.05),
        draws.quantile(run -> run[k], 0.5),
        draws.quantile(run -> run[k], 0.95));
  }
}
