package holdcurve.ui.command;

import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.DynamicLine;
import holdcurve.bench.flowsheet.FlowReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.MatchedSets;
import holdcurve.bench.flowsheet.Service;
import holdcurve.common.number.Interval;
import holdcurve.physics.circuit.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** A bench report as text for a terminal. */
final class BenchSheetText {
  private static final String ROW = "  %-8s %8s %8s %15s %8s %6s %6s %7s";

  private final BenchReport report;
  private final List<String> sprayGrades;
  private final Printout out;

  private BenchSheetText(BenchReport report, List<String> sprayGrades, Printout out) {
    this.report = report;
    this.sprayGrades = sprayGrades;
    this.out = out;
  }

  static void print(BenchReport report, List<String> sprayGrades, Printout out) {
    new BenchSheetText(report, sprayGrades, out).print();
  }

  private void print() {
    out.println(report.sheet().title());
    out.println();
    CautionLines.BENCH.print(out);
    report.verdict().forEach(sentence -> out.wrapped("", sentence));
    out.println();
    printTable();
    printLines();
    out.println("Assumed, and read from the files:");
    report.notes().forEach(note -> out.wrapped("  - ", note));
  }

  private void printTable() {
    boolean both = report.sheet().has(Service.BEFORE) && report.sheet().has(Service.AFTER);
    String flow = both ? "before" : "static";
    String then = both ? "after" : "";
    row("Injector", flow, then, "out of line by", "service", "drops", "coil", "spray");
    row("", "mL/min", both ? "mL/min" : "", "(90 % range)", "", "/min", "Ω", "grade");
    for (InjectorReport injector : report.injectors()) {
      FlowReport now = injector.now();
      row(
          injector.id(),
          injector.before().map(BenchSheetText::flow).orElse(both ? "" : flow(now)),
          both ? injector.after().map(BenchSheetText::flow).orElse("") : "",
          now.worst().map(BenchSheetText::range).orElse(""),
          injector.gain().map(gain -> signed(gain.middle())).orElse(""),
          now.readings().drops().map(d -> figure(d.perMinute())).orElse(""),
          figure(now.readings().coil()),
          now.readings().spray().map(String::valueOf).orElse(""));
    }
    set("mean");
    out.println("  Spray: " + grades() + ".");
    out.println();
  }

  private void set(String name) {
    String before = report.before().map(s -> flow(s.mean().middle())).orElse("");
    String after = report.after().map(s -> flow(s.mean().middle())).orElse("");
    String gain = report.gain().map(g -> signed(g.middle())).orElse("");
    boolean onlyAfter = report.before().isEmpty();
    row(name, onlyAfter ? after : before, onlyAfter ? "" : after, "", gain, "", "", "");
  }

  private String grades() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < sprayGrades.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(i + 1).append(' ').append(sprayGrades.get(i));
    }
    return text.toString();
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

  private void row(Object... cells) {
    out.println(String.format(Locale.ROOT, ROW, cells).stripTrailing());
  }

  private static String flow(FlowReport report) {
    return report.staticFlow().isPresent() ? flow(report.staticFlow().getAsDouble()) : "";
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
