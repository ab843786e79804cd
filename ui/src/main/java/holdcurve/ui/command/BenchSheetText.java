package holdcurve.ui.command;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.DynamicLine;
import holdcurve.bench.flowsheet.FlowReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.MatchedSets;
import holdcurve.bench.flowsheet.Service;
import holdcurve.bench.flowsheet.SetHistory;
import holdcurve.common.number.Interval;
import holdcurve.physics.circuit.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A bench report as text for a terminal. */
final class BenchSheetText {
  private static final String ROW = "  %-8s %8s %8s %15s %8s  %s";
  private static final String REST = "  %-8s %8s %8s  %-16s %-16s %6s";

  private final BenchReport report;
  private final BenchLimits limits;
  private final Printout out;

  private BenchSheetText(BenchReport report, BenchLimits limits, Printout out) {
    this.report = report;
    this.limits = limits;
    this.out = out;
  }

  static void print(BenchReport report, BenchLimits limits, Printout out) {
    new BenchSheetText(report, limits, out).print();
  }

  private void print() {
    out.println(report.sheet().title());
    out.println();
    CautionLines.BENCH.print(out);
    out.println(report.headline().kind().word());
    report.verdict().forEach(sentence -> out.wrapped("", sentence));
    out.println();
    printFlows();
    printRest();
    printLines();
    out.println("Assumed, and read from the files:");
    report.notes().forEach(note -> out.wrapped("  - ", note));
  }

  private void printFlows() {
    boolean both = isBoth();
    String at = "mL/min";
    row(
        "Injector",
        both ? "before" : "flow",
        both ? "after" : "",
        "out of line by",
        "gain",
        "to do");
    row("", at, both ? at : "", "(90 % range)", "", "");
    for (InjectorReport injector : report.injectors()) {
      row(
          injector.id(),
          both ? flow(injector.before()) : flow(Optional.of(injector.now())),
          both ? flow(injector.after()) : "",
          injector.now().worst().map(BenchSheetText::range).orElse(""),
          injector.gain().map(gain -> signed(gain.middle())).orElse(""),
          injector.fitness().words());
    }
    String before = report.before().map(s -> flow(s.mean().middle())).orElse("");
    String after = report.after().map(s -> flow(s.mean().middle())).orElse("");
    String gain = report.gain().map(g -> signed(g.middle())).orElse("");
    row("mean", before.isEmpty() ? after : before, before.isEmpty() ? "" : after, "", gain, "");
    out.println();
  }

  private boolean isBoth() {
    return report.sheet().has(Service.BEFORE) && report.sheet().has(Service.AFTER);
  }

  /** Drops, spray and coil; before cleaning on the left where both were looked at. */
  private void printRest() {
    boolean any =
        report.injectors().stream()
            .flatMap(i -> Stream.of(i.before(), i.after()).flatMap(Optional::stream))
            .map(FlowReport::readings)
            .anyMatch(r -> r.drops().isPresent() || r.spray().isPresent() || r.coil().isPresent());
    if (!any) {
      return;
    }
    boolean both = isBoth();
    rest("Injector", "drops", both ? "a minute" : "", "spray", "", "coil");
    rest(
        "",
        both ? "before" : "a min",
        both ? "after" : "",
        both ? "before" : "",
        both ? "after" : "",
        "Ω");
    for (InjectorReport injector : report.injectors()) {
      Optional<FlowReport> first = both ? injector.before() : Optional.of(injector.now());
      Optional<FlowReport> second = both ? injector.after() : Optional.empty();
      rest(
          injector.id(),
          drops(first),
          drops(second),
          spray(first),
          spray(second),
          figure(injector.now().readings().coil()));
    }
    out.println();
  }

  private static String drops(Optional<FlowReport> flow) {
    return flow.flatMap(f -> f.readings().drops()).map(d -> figure(d.perMinute())).orElse("");
  }

  private String spray(Optional<FlowReport> flow) {
    return flow.flatMap(f -> f.readings().spray()).map(limits::sprayWord).orElse("");
  }

  private void printLines() {
    if (report.injectors().stream().allMatch(i -> i.now().line().isEmpty())) {
      return;
    }
    out.println("  Dynamic flow: slope (flow while open), time offset, linear range");
    for (InjectorReport injector : report.injectors()) {
      injector.now().line().ifPresent(line -> out.println("  " + pad(injector.id()) + line(line)));
    }
    out.println();
  }

  private static String pad(String id) {
    return String.format(Locale.ROOT, "%-8s ", id);
  }

  private static String line(DynamicLine line) {
    double error = line.slopeError();
    return String.format(
        Locale.ROOT,
        "%6.1f%s mL/min, %5.2f ms, linear from %s to %s ms",
        Unit.MILLILITRE_PER_MINUTE.fromSi(line.slope()),
        Double.isNaN(error)
            ? ""
            : String.format(Locale.ROOT, " ± %.1f", Unit.MILLILITRE_PER_MINUTE.fromSi(error)),
        1e3 * line.timeOffset(),
        plain(1e3 * line.linearFrom()),
        plain(1e3 * line.linearTo()));
  }

  /** A set over the years. */
  static void print(SetHistory history, Printout out) {
    out.println("History of the set: per cent from the middle of the set");
    List<SetHistory.Visit> visits = history.visits();
    out.println("  " + pad("Mark") + cells(visits.stream().map(SetHistory.Visit::date).toList()));
    out.println("  " + pad("") + cells(visits.stream().map(v -> v.state().word()).toList()));
    for (SetHistory.Line line : history.lines()) {
      List<String> cells = line.departures().stream().map(BenchSheetText::departure).toList();
      out.println(("  " + pad(line.mark()) + cells(cells)).stripTrailing());
    }
    out.println();
    history.said().forEach(sentence -> Wrapped.print(out, "  - ", sentence));
    out.println();
  }

  private static String departure(Optional<Interval> departure) {
    return departure.map(d -> SetHistory.percent(d.middle())).orElse("–");
  }

  private static String cells(List<String> cells) {
    StringBuilder text = new StringBuilder();
    cells.forEach(cell -> text.append(String.format(Locale.ROOT, " %10s", cell)));
    return text.toString();
  }

  /** Sets for engines. */
  static void print(MatchedSets matched, Printout out) {
    out.println("Matched sets, in order of flow:");
    int number = 1;
    for (MatchedSets.MatchedSet set : matched.sets()) {
      Wrapped.print(
          out,
          "  " + number++ + "  ",
          String.format(
              Locale.ROOT,
              "%s: mean %s mL/min, spread %.1f %%",
              String.join(", ", set.ids()),
              flow(set.mean()),
              100 * set.spread()));
      set.flags().forEach(flag -> Wrapped.print(out, "     ! ", flag));
    }
    left("left over", matched.left()).ifPresent(out::println);
    left("not fit to refit", matched.unfit()).ifPresent(out::println);
    out.println();
  }

  private static Optional<String> left(String what, List<String> ids) {
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of("     " + what + ": " + String.join(", ", ids));
  }

  private void rest(Object... cells) {
    out.println(String.format(Locale.ROOT, REST, cells).stripTrailing());
  }

  private void row(Object... cells) {
    out.println(String.format(Locale.ROOT, ROW, cells).stripTrailing());
  }

  private static String flow(Optional<FlowReport> report) {
    OptionalDouble flow = report.map(FlowReport::staticFlow).orElse(OptionalDouble.empty());
    return flow.isPresent() ? flow(flow.getAsDouble()) : "";
  }

  private static String flow(double si) {
    double flow = Unit.MILLILITRE_PER_MINUTE.fromSi(si);
    return String.format(Locale.ROOT, "%.0f", flow);
  }

  private static String range(Interval departure) {
    return String.format(
        Locale.ROOT,
        "%+.1f ± %.1f %%",
        100 * departure.middle(),
        50 * (departure.high() - departure.low()));
  }

  private static String signed(double share) {
    return String.format(Locale.ROOT, "%+.0f %%", 100 * share);
  }

  private static String figure(OptionalDouble value) {
    return value.isPresent() ? figure(value.getAsDouble()) : "";
  }

  private static String figure(double value) {
    return plain(Math.rint(10 * value) / 10);
  }

  private static String plain(double value) {
    return java.math.BigDecimal.valueOf(Math.rint(1e3 * value) / 1e3)
        .stripTrailingZeros()
        .toPlainString();
  }
}
