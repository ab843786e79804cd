package holdcurve.ui.report;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.FlowReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.Service;
import holdcurve.physics.circuit.Unit;
import holdcurve.ui.theme.Role;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Bars of what injectors pass, from nothing to the highest, with the limits about the middle of the
 * set. Before cleaning a bar is outlined, after it is filled, so that paper needs no colour.
 *
 * @param title heading of the bars
 * @param unit heading of the figures
 * @param flow of an injector in a state, in that unit
 * @param middle of the set now, in that unit; empty where fewer than two were measured
 * @param most highest of all, in that unit
 */
record FlowBars(
    BenchReport report,
    BenchLimits limits,
    String title,
    String unit,
    Function<FlowReport, OptionalDouble> flow,
    OptionalDouble middle,
    double most) {
  private static final double WIDTH = 230;
  private static final double BAR = 9;
  private static final double STEP = 13;

  /** By static flow, or by the shortest pulse where that wasn't measured. */
  static FlowBars of(BenchReport report, BenchLimits limits) {
    boolean isStatic = flows(report).anyMatch(flow -> flow.staticFlow().isPresent());
    Function<FlowReport, OptionalDouble> flow =
        isStatic ? FlowBars::staticFlow : one -> pulse(one, report);
    double[] now =
        report.injectors().stream()
            .map(i -> i.flow(report.latest()).map(flow).orElse(OptionalDouble.empty()))
            .flatMapToDouble(OptionalDouble::stream)
            .sorted()
            .toArray();
    OptionalDouble middle =
        now.length < 2
            ? OptionalDouble.empty()
            : OptionalDouble.of((now[(now.length - 1) / 2] + now[now.length / 2]) / 2);
    double most = flows(report).map(flow).flatMapToDouble(OptionalDouble::stream).max().orElse(1);
    return new FlowBars(
        report,
        limits,
        isStatic ? "Flow, held open" : "Flow, short pulse",
        isStatic ? "mL/min" : "µL a pulse",
        flow,
        middle,
        Math.max(most, 1.12 * middle.orElse(0)));
  }

  private static Stream<FlowReport> flows(BenchReport report) {
    return report.injectors().stream()
        .flatMap(i -> Stream.of(i.before(), i.after()).flatMap(Optional::stream));
  }

  private static OptionalDouble staticFlow(FlowReport flow) {
    return flow.staticFlow().isPresent()
        ? OptionalDouble.of(Unit.MILLILITRE_PER_MINUTE.fromSi(flow.staticFlow().getAsDouble()))
        : OptionalDouble.empty();
  }

  private static OptionalDouble pulse(FlowReport flow, BenchReport report) {
    return report.pulse().isEmpty()
        ? OptionalDouble.empty()
        : flow.readings().dynamicFlow(report.pulse().getAsDouble()).stream()
            .map(volume -> 1e9 * volume)
            .findFirst();
  }

  Optional<String> figure(FlowReport one) {
    OptionalDouble value = flow.apply(one);
    return value.isPresent()
        ? Optional.of(
            String.format(
                Locale.ROOT, value.getAsDouble() < 20 ? "%.1f" : "%.0f", value.getAsDouble()))
        : Optional.empty();
  }

  String legend() {
    boolean both = report.sheet().has(Service.BEFORE) && report.sheet().has(Service.AFTER);
    String bars = both ? "Outlined: before cleaning; filled: after. " : "";
    return middle.isEmpty()
        ? bars
        : String.format(
            Locale.ROOT,
            "%sBand: within %.0f %% of the middle of the set; dashed: %.0f %% (common practice, no"
                + " source).",
            bars,
            100 * limits.outOfLine(),
            100 * limits.farOut());
  }

  /** The bars of one injector. */
  Html of(InjectorReport injector) {
    int states = (int) Stream.of(Service.values()).filter(report.sheet()::has).count();
    double height = states * STEP + 2;
    StringBuilder code = new StringBuilder();
    if (middle.isPresent()) {
      double low = x(middle.getAsDouble() * (1 - limits.outOfLine()));
      double high = x(middle.getAsDouble() * (1 + limits.outOfLine()));
      code.append(rectangle(low, 0, high - low, height, Colours.of(Role.BAND), "none"));
    }
    int line = 0;
    for (Service state : Service.values()) {
      if (report.sheet().has(state)) {
        double top = 2 + STEP * line++;
        boolean filled = state == report.latest();
        OptionalDouble value = injector.flow(state).map(flow).orElse(OptionalDouble.empty());
        if (value.isPresent()) {
          code.append(
              rectangle(
                  0.5,
                  top,
                  x(value.getAsDouble()),
                  BAR,
                  filled ? Colours.of(Role.BAR) : Colours.of(Role.PAPER),
                  Colours.of(Role.TEXT)));
        }
      }
    }
    middle.ifPresent(
        m -> {
          code.append(line(x(m), height, ""));
          code.append(line(x(m * (1 - limits.farOut())), height, "3 2"));
          code.append(line(x(m * (1 + limits.farOut())), height, "3 2"));
        });
    return new Html(
        text(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0"
                + " %.0f %.0f\">%s</svg>",
            WIDTH, height, WIDTH, height, code));
  }

  private double x(double value) {
    return value / most * (WIDTH - 4);
  }

  private static String rectangle(
      double left, double top, double width, double height, String fill, String stroke) {
    return text(
        "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\" stroke=\"%s\""
            + " stroke-width=\"0.8\"/>",
        left, top, width, height, fill, stroke);
  }

  private static String line(double at, double height, String dashes) {
    return text(
        "<line x1=\"%.1f\" y1=\"0\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"0.8\""
            + " stroke-dasharray=\"%s\"/>",
        at, at, height, Colours.of(Role.TEXT), dashes.isEmpty() ? "none" : dashes);
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
