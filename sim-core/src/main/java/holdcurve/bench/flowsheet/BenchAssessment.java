package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Carries the flows of a sheet over to the circuit, compares them, and judges. */
public final class BenchAssessment {
  private final BenchSheet sheet;
  private final FlowPoint point;
  private final BenchLimits limits;
  private final Service latest;

  private BenchAssessment(BenchSheet sheet, FlowPoint point, BenchLimits limits) {
    this.sheet = sheet;
    this.point = point;
    this.limits = limits;
    this.latest = sheet.latest();
  }

  /**
   * @param point pressure and fuel at which the injectors will work
   * @param today for the reminder to refit them in time
   */
  public static BenchReport judge(
      BenchSheet sheet, FlowPoint point, BenchLimits limits, LocalDate today) {
    return new BenchAssessment(sheet, point, limits).report(today);
  }

  private BenchReport report(LocalDate today) {
    List<Optional<FlowReport>> before = flows(Service.BEFORE);
    List<Optional<FlowReport>> after = flows(Service.AFTER);
    List<InjectorReport> injectors = new ArrayList<>();
    for (int i = 0; i < sheet.injectors().size(); i++) {
      injectors.add(injector(sheet.injectors().get(i), before.get(i), after.get(i)));
    }
    Optional<SetFlow> setBefore = set(before, Service.BEFORE);
    Optional<SetFlow> setAfter = set(after, Service.AFTER);
    BenchReport report =
        new BenchReport(
            sheet,
            point,
            latest,
            setBefore,
            setAfter,
            sharedPulse(latest),
            meanGain(injectors),
            flowLeft(latest == Service.AFTER ? setAfter : setBefore),
            injectors,
            new BenchHeadline(BenchHeadline.Kind.NO_FLOWS, List.of()),
            List.of(),
            List.of());
    BenchWords words = new BenchWords(report, limits, today);
    return new BenchReport(
        sheet,
        point,
        latest,
        setBefore,
        setAfter,
        report.pulse(),
        report.gain(),
        report.flowLeft(),
        injectors,
        words.headline(),
        words.more(),
        words.notes());
  }

  private double factor(Service state) {
    return sheet.bench(state).point().factorTo(point);
  }

  private List<Optional<FlowReport>> flows(Service state) {
    List<Optional<BenchReadings>> all =
        sheet.injectors().stream().map(injector -> injector.readings(state)).toList();
    OptionalDouble pulse = sharedPulse(state);
    List<OptionalDouble> statics =
        all.stream()
            .map(r -> r.map(BenchReadings::staticFlow).orElse(OptionalDouble.empty()))
            .toList();
    List<OptionalDouble> pulses =
        all.stream()
            .map(
                r ->
                    r.isPresent() && pulse.isPresent()
                        ? r.get().dynamicFlow(pulse.getAsDouble())
                        : OptionalDouble.empty())
            .toList();
    List<Optional<Interval>> staticDepartures = departures(statics, state);
    List<Optional<Interval>> pulseDepartures = departures(pulses, state);
    List<Optional<FlowReport>> reports = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Optional<Interval> byStatic = staticDepartures.get(i);
      Optional<Interval> byPulse = pulseDepartures.get(i);
      reports.add(all.get(i).map(readings -> flow(readings, state, byStatic, byPulse)));
    }
    return reports;
  }

  private FlowReport flow(
      BenchReadings readings,
      Service state,
      Optional<Interval> departure,
      Optional<Interval> pulseDeparture) {
    double factor = factor(state);
    OptionalDouble flow =
        readings.staticFlow().isPresent()
            ? OptionalDouble.of(factor * readings.staticFlow().getAsDouble())
            : OptionalDouble.empty();
    List<DynamicFlow> carried =
        readings.dynamicFlows().stream()
            .map(d -> new DynamicFlow(d.pulse(), factor * d.volume()))
            .toList();
    Optional<DynamicLine> line = DynamicLine.fit(carried, limits.linearDeparture());
    return new FlowReport(readings, flow, departure, pulseDeparture, line);
  }

  /** Deviations of those that were measured; a set of one has none. */
  private List<Optional<Interval>> departures(List<OptionalDouble> flows, Service state) {
    List<Double> measured =
        flows.stream().filter(OptionalDouble::isPresent).map(OptionalDouble::getAsDouble).toList();
    List<Optional<Interval>> result = new ArrayList<>();
    List<Interval> departures =
        measured.size() < 2
            ? List.of()
            : FlowDeviations.of(measured, sheet.bench(state).repeatability());
    int next = 0;
    for (OptionalDouble flow : flows) {
      boolean known = flow.isPresent() && !departures.isEmpty();
      result.add(known ? Optional.of(departures.get(next++)) : Optional.empty());
    }
    return result;
  }

  /** The shortest pulse at which every injector of that state was measured. */
  private OptionalDouble sharedPulse(Service state) {
    List<BenchReadings> all =
        sheet.injectors().stream().flatMap(i -> i.readings(state).stream()).toList();
    return all.stream()
        .flatMap(readings -> readings.dynamicFlows().stream())
        .mapToDouble(DynamicFlow::pulse)
        .filter(pulse -> all.stream().allMatch(r -> r.dynamicFlow(pulse).isPresent()))
        .min();
  }

  private InjectorReport injector(
      BenchInjector measured, Optional<FlowReport> before, Optional<FlowReport> after) {
    FlowReport now = after.or(() -> before).orElseThrow();
    Optional<Interval> worst = now.worst();
    Standing standing =
        worst.map(d -> Standing.of(d.middle(), limits)).orElse(Standing.NOT_MEASURED);
    boolean sure =
        worst
            .map(
                d ->
                    isInLine(d.low()) == (standing == Standing.IN_LINE)
                        && isInLine(d.high()) == (standing == Standing.IN_LINE))
            .orElse(false);
    return new InjectorReport(
        measured.id(),
        measured.serial(),
        before,
        after,
        gain(before, after),
        standing,
        sure,
        new InjectorFaults(limits).of(now.readings()));
  }

  private boolean isInLine(double departure) {
    return Standing.of(departure, limits) == Standing.IN_LINE;
  }

  private Optional<Interval> gain(Optional<FlowReport> before, Optional<FlowReport> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble was = before.get().staticFlow();
    OptionalDouble is = after.get().staticFlow();
    if (was.isEmpty() || is.isEmpty()) {
      return Optional.empty();
    }
    double ratio = is.getAsDouble() / was.getAsDouble();
    double spread = Math.hypot(ownError(Service.BEFORE), ownError(Service.AFTER));
    double reach = FlowDeviations.TO_90_PERCENT * ratio * spread;
    return Optional.of(new Interval(ratio - 1 - reach, ratio - 1, ratio - 1 + reach));
  }

  /** What two visits to a bench don't share; two benches share nothing. */
  private double ownError(Service state) {
    Bench bench = sheet.bench(state);
    boolean same = sheet.benchBefore().equals(sheet.benchAfter());
    return same ? bench.repeatability() : Math.hypot(bench.repeatability(), bench.accuracy());
  }

  private Optional<Interval> meanGain(List<InjectorReport> injectors) {
    List<Interval> gains = injectors.stream().flatMap(i -> i.gain().stream()).toList();
    if (gains.isEmpty()) {
      return Optional.empty();
    }
    double mean = gains.stream().mapToDouble(Interval::middle).average().orElseThrow();
    double own =
        Math.hypot(sheet.benchBefore().repeatability(), sheet.benchAfter().repeatability())
            / Math.sqrt(gains.size());
    boolean same = sheet.benchBefore().equals(sheet.benchAfter());
    double common =
        same ? 0 : Math.hypot(sheet.benchBefore().accuracy(), sheet.benchAfter().accuracy());
    double reach = FlowDeviations.TO_90_PERCENT * (1 + mean) * Math.hypot(own, common);
    return Optional.of(new Interval(mean - reach, mean, mean + reach));
  }

  private Optional<SetFlow> set(List<Optional<FlowReport>> flows, Service state) {
    double[] all =
        flows.stream()
            .flatMap(Optional::stream)
            .map(FlowReport::staticFlow)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .toArray();
    if (all.length == 0) {
      return Optional.empty();
    }
    double mean = DoubleStream.of(all).average().orElseThrow();
    double range =
        DoubleStream.of(all).max().orElseThrow() - DoubleStream.of(all).min().orElseThrow();
    Bench bench = sheet.bench(state);
    double error = Math.hypot(bench.accuracy(), bench.repeatability() / Math.sqrt(all.length));
    double reach = FlowDeviations.TO_90_PERCENT * mean * error;
    return Optional.of(
        new SetFlow(new Interval(mean - reach, mean, mean + reach), range / mean, all.length));
  }

  private Optional<Interval> flowLeft(Optional<SetFlow> set) {
    if (set.isEmpty() || sheet.ratedFlow().isEmpty()) {
      return Optional.empty();
    }
    double rated = sheet.ratedFlow().getAsDouble() * sheet.benchAfter().point().factorTo(point);
    Interval mean = set.get().mean();
    return Optional.of(
        new Interval(mean.low() / rated, mean.middle() / rated, mean.high() / rated));
  }
}
