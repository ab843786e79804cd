package holdcurve.bench.droptest;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.number.Interval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Turns the drops of a test into flows, and ranks the injectors. */
public final class DropAssessment {
  private static final int DRAWS = 3000;

  private final DropTest test;
  private final TrappedFuel fuel;
  private final BenchLimits limits;
  private final RandomGenerator random;
  private final List<String> ids;
  private final double pressure;

  private DropAssessment(DropTest test, TrappedFuel fuel, BenchLimits limits, long seed) {
    this.test = test;
    this.fuel = fuel;
    this.limits = limits;
    this.random = new Well19937c(seed);
    this.ids = test.injectors();
    this.pressure = test.meanBefore();
  }

  /**
   * @param fuel what the circuit model says of the trapped fuel
   * @param seed of the draws; the same seed gives the same answer
   */
  public static DropReport judge(DropTest test, TrappedFuel fuel, BenchLimits limits, long seed) {
    return new DropAssessment(test, fuel, limits, seed).report();
  }

  private DropReport report() {
    PassedPosterior posterior = new PassedPosterior(test, fuel);
    double[][] departures = new double[ids.size()][DRAWS];
    double[][] flows = new double[ids.size()][DRAWS];
    double[] lowest = new double[ids.size()];
    for (int d = 0; d < DRAWS; d++) {
      double[] passed = withoutIdle(posterior.draw(random));
      double middle = median(passed);
      double perPassed = perPassed();
      int least = 0;
      for (int i = 0; i < passed.length; i++) {
        departures[i][d] = passed[i] / middle - 1;
        flows[i][d] = passed[i] * perPassed;
        least = passed[i] < passed[least] ? i : least;
      }
      lowest[least] += 1.0 / DRAWS;
    }
    List<InjectorDrop> injectors = new ArrayList<>();
    for (int i = 0; i < ids.size(); i++) {
      List<Integer> alike = readAlike(i);
      injectors.add(
          injector(
              ids.get(i),
              interval(pooled(departures, alike)),
              alike.stream().mapToDouble(k -> lowest[k]).average().orElseThrow(),
              flow(pooled(flows, alike))));
    }
    injectors.sort(Comparator.comparingDouble(i -> i.departure().middle()));
    DropReport report =
        new DropReport(
            test,
            pressure,
            injectors,
            RepeatAdvice.of(test, limits),
            IdleRate.of(test).rate() * test.shot().pause(),
            List.of(),
            List.of());
    DropWords words = new DropWords(report, fuel, limits);
    return new DropReport(
        test,
        pressure,
        injectors,
        report.advice(),
        report.idleFall(),
        words.verdict(),
        words.notes());
  }

  /** Injectors with the very same readings, in whatever order: they get the very same answer. */
  private List<Integer> readAlike(int i) {
    Map<Firing, Long> own = readings(ids.get(i));
    return IntStream.range(0, ids.size())
        .filter(k -> readings(ids.get(k)).equals(own))
        .boxed()
        .toList();
  }

  private Map<Firing, Long> readings(String id) {
    return test.of(id).stream()
        .map(firing -> new Firing("", firing.before(), firing.after(), firing.later()))
        .collect(Collectors.groupingBy(firing -> firing, Collectors.counting()));
  }

  private static double[] pooled(double[][] draws, List<Integer> of) {
    return of.stream().flatMapToDouble(i -> Arrays.stream(draws[i])).toArray();
  }

  /** Takes off what would have been lost without firing. */
  private double[] withoutIdle(double[] passed) {
    double fall = IdleRate.of(test).draw(random) * test.shot().pause();
    double[] rest = new double[passed.length];
    for (int i = 0; i < rest.length; i++) {
      double after = fuel.after(pressure, passed[i]) + fall;
      rest[i] = Math.max(1e-3 * passed[i], fuel.passed(pressure, Math.min(pressure, after)));
    }
    return rest;
  }

  /** Turns k t into a flow at the pressure of the test, with the doubt about the compliance. */
  private double perPassed() {
    double doubt = fuel.isKnown() ? Math.exp(fuel.spread() * random.nextGaussian()) : 1;
    return doubt * Math.sqrt(pressure) / test.shot().openTime();
  }

  private Optional<Interval> flow(double[] flows) {
    return fuel.isKnown() ? Optional.of(interval(flows)) : Optional.empty();
  }

  private InjectorDrop injector(
      String id, Interval departure, double lowest, Optional<Interval> flow) {
    Standing standing = Standing.of(departure.middle(), limits);
    boolean inLine = standing == Standing.IN_LINE;
    boolean sure =
        (Standing.of(departure.low(), limits) == Standing.IN_LINE) == inLine
            && (Standing.of(departure.high(), limits) == Standing.IN_LINE) == inLine
            && (inLine || departure.low() * departure.high() > 0);
    List<Firing> firings = test.of(id);
    double drop = firings.stream().mapToDouble(f -> f.before() - f.after()).average().orElseThrow();
    return new InjectorDrop(
        id,
        firings.size(),
        drop,
        departure,
        standing,
        sure,
        lowest,
        drop > 0,
        AfterFall.staysOpen(test, id),
        flow);
  }

  private static Interval interval(double[] draws) {
    double[] sorted = draws.clone();
    Arrays.sort(sorted);
    return new Interval(
        sorted[(int) (0.05 * sorted.length)],
        sorted[sorted.length / 2],
        sorted[(int) (0.95 * sorted.length)]);
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }
}
