package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A set on the bench again and again: how far each injector was from the middle of its set at each
 * visit, and whether it wanders. Injectors are known by their marks. What all flows of a visit
 * share cancels, so visits to different benches compare.
 *
 * @param visits the earliest first; sheets without a day come first, in the order given
 * @param lines one an injector that was measured at least twice
 */
public record SetHistory(List<Visit> visits, List<Line> lines) {
  /**
   * One state of service on one sheet.
   *
   * @param day of the sheet, where it says so
   */
  public record Visit(Optional<LocalDate> day, Service state) {
    /** The day, or that there is none. */
    public String date() {
      return day.map(LocalDate::toString).orElse("no date");
    }
  }

  /** Which way an injector went. */
  public enum Trend {
    FALLING("passes less than it did"),
    RISING("passes more than it did"),
    STEADY("no change that the bench can show");

    private final String words;

    Trend(String words) {
      this.words = words;
    }

    /** For a person. */
    public String words() {
      return words;
    }
  }

  /**
   * One injector.
   *
   * @param mark by which it is known
   * @param departures from the middle of its set, one a visit; empty where it wasn't measured [-]
   * @param drops in a minute, one a visit [1/min]
   * @param drift from the last readings of its first sheet to the first readings of its last one
   *     [-]
   */
  public record Line(
      String mark,
      List<Optional<Interval>> departures,
      List<OptionalDouble> drops,
      Interval drift) {
    public Line {
      departures = List.copyOf(departures);
      drops = List.copyOf(drops);
    }

    public Trend trend() {
      if (drift.low() > 0) {
        return Trend.RISING;
      }
      return drift.high() < 0 ? Trend.FALLING : Trend.STEADY;
    }
  }

  public SetHistory {
    visits = List.copyOf(visits);
    lines = List.copyOf(lines);
  }

  /** A sentence an injector, then what the trend is. */
  public List<String> said() {
    List<String> said = new ArrayList<>();
    for (Line line : lines) {
      Interval d = line.drift();
      said.add(
          String.format(
              Locale.ROOT,
              "%s: %s (%s ± %.1f %%).%s",
              line.mark(),
              line.trend().words(),
              percent(d.middle()),
              50 * (d.high() - d.low()),
              drips(line)));
    }
    said.add("The trend runs from the first sheet, as it left, to the last one, as it came.");
    return said;
  }

  /** A departure in per cent with its sign; nought has a plus. */
  public static String percent(double departure) {
    return String.format(Locale.ROOT, "%+.1f", Math.rint(1000 * departure) / 10 + 0.0);
  }

  private String drips(Line line) {
    List<String> days = new ArrayList<>();
    for (int i = 0; i < visits.size(); i++) {
      if (line.drops().get(i).orElse(0) > 0) {
        days.add(visits.get(i).date() + " " + visits.get(i).state().word());
      }
    }
    return days.isEmpty() ? "" : " Dripped: " + String.join(", ", days) + ".";
  }

  /**
   * @param reports one a sheet, in any order
   */
  public static SetHistory of(List<BenchReport> reports) {
    List<BenchReport> sorted =
        reports.stream()
            .sorted(Comparator.comparing(report -> report.sheet().day().orElse(LocalDate.MIN)))
            .toList();
    List<Visit> visits = new ArrayList<>();
    for (BenchReport report : sorted) {
      for (Service state : Service.values()) {
        if (report.sheet().has(state)) {
          visits.add(new Visit(report.sheet().day(), state));
        }
      }
    }
    Set<String> marks = new LinkedHashSet<>();
    sorted.forEach(report -> report.injectors().forEach(i -> marks.add(i.mark())));
    List<Line> lines = new ArrayList<>();
    marks.forEach(mark -> line(mark, sorted).ifPresent(lines::add));
    return new SetHistory(visits, lines);
  }

  private static Optional<Line> line(String mark, List<BenchReport> sorted) {
    List<Optional<Interval>> departures = new ArrayList<>();
    List<OptionalDouble> drops = new ArrayList<>();
    Optional<Interval> first = Optional.empty();
    Optional<Interval> last = Optional.empty();
    for (BenchReport report : sorted) {
      Optional<InjectorReport> one =
          report.injectors().stream().filter(i -> i.mark().equals(mark)).findFirst();
      for (Service state : Service.values()) {
        if (report.sheet().has(state)) {
          Optional<FlowReport> flow = one.flatMap(i -> i.flow(state));
          departures.add(flow.flatMap(FlowReport::worst));
          drops.add(perMinute(flow));
        }
      }
      if (first.isEmpty()) {
        first = one.flatMap(i -> i.now().worst());
      } else {
        Optional<Interval> came = one.flatMap(SetHistory::earliest);
        last = came.isPresent() ? came : last;
      }
    }
    if (first.isEmpty() || last.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Line(mark, departures, drops, drift(first.get(), last.get())));
  }

  private static OptionalDouble perMinute(Optional<FlowReport> flow) {
    return flow.flatMap(f -> f.readings().drops())
        .map(d -> OptionalDouble.of(d.perMinute()))
        .orElse(OptionalDouble.empty());
  }

  /** As it came to the bench, or after the service where only that was measured. */
  private static Optional<Interval> earliest(InjectorReport injector) {
    return injector
        .before()
        .flatMap(FlowReport::worst)
        .or(() -> injector.after().flatMap(FlowReport::worst));
  }

  private static Interval drift(Interval first, Interval last) {
    double middle = last.middle() - first.middle();
    double reach = Math.hypot(first.high() - first.low(), last.high() - last.low()) / 2;
    return new Interval(middle - reach, middle, middle + reach);
  }
}
