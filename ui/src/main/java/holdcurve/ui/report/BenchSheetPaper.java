package holdcurve.ui.report;

import holdcurve.bench.flowsheet.BenchDrops;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReadings;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.Fitness;
import holdcurve.bench.flowsheet.FlowReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.Mixture;
import holdcurve.bench.flowsheet.Service;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.text.Titles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** A bench sheet drawn for the customer, on one page. */
public final class BenchSheetPaper {
  /** So many injectors fit on a page in rows of the usual height. */
  private static final int ROOMY = 12;

  private final BenchReport report;
  private final BenchLimits limits;
  private final PressureUnit unit;
  private final FlowBars bars;

  private BenchSheetPaper(BenchReport report, BenchLimits limits, PressureUnit unit) {
    this.report = report;
    this.limits = limits;
    this.unit = unit;
    this.bars = FlowBars.of(report, limits);
  }

  /** A page of its own: well-formed HTML, encoded as UTF-8 when written. */
  public static String html(
      BenchReport report, BenchLimits limits, LocalDate printed, PressureUnit unit) {
    Html body =
        Html.all(
            new BenchSheetPaper(report, limits, unit).sheet("h1"),
            Html.of("p.small", "Printed " + printed + "."),
            Html.of(
                "table.sign",
                Html.of(
                    "tr",
                    Html.of("td", Html.of("p", "Bench run by, date")),
                    Html.of("td", Html.of("p", "Seen by the owner, date")))));
    return ReportPage.document(
        Titles.shown(report.sheet().title()) + " – bench sheet", "bench", body);
  }

  /** The sheet as a page in the report of a job. */
  static Html section(BenchReport report, BenchLimits limits, PressureUnit unit) {
    return Html.of("div.alone", new BenchSheetPaper(report, limits, unit).sheet("h2"));
  }

  private Html sheet(String heading) {
    return Html.all(
        Html.of("p.kicker", "Injectors on the flow bench"),
        Html.of(heading, Titles.shown(report.sheet().title())),
        Html.of(
            "div.verdict",
            Html.of("p.word", report.headline().kind().word()),
            Html.of("p", said(report.headline().said()))),
        Html.table(
            report.injectors().size() > ROOMY ? "bench.narrow" : "bench",
            List.of(
                "No.", bars.title(), bars.unit(), "Spray", "Drops a minute", "Mixture", "To do"),
            report.injectors().stream().map(this::row).toList()),
        Html.of("p.small", bars.legend()),
        Html.of(
            "p.small",
            "Mixture: how much richer or leaner the cylinder runs than the engine's average"
                + basis()
                + "."),
        Html.of(
            "ul", Html.all(report.more().stream().map(m -> Html.of("li", m.in(unit))).toList())),
        Html.of(
            "ul.small",
            Html.all(report.notes().stream().map(m -> Html.of("li", m.in(unit))).toList())));
  }

  private String said(List<Message> messages) {
    return String.join(" ", messages.stream().map(message -> message.in(unit)).toList());
  }

  private Optional<Mixture> mixture() {
    return Mixture.underLoad(report).or(() -> Mixture.atShortPulses(report));
  }

  private String basis() {
    return Mixture.underLoad(report).isPresent() ? ", at full load" : ", at short pulses";
  }

  private List<Html> row(InjectorReport injector) {
    List<Html> cells = new ArrayList<>();
    String mark = injector.serial().map(serial -> " (" + serial + ")").orElse("");
    cells.add(Html.text(injector.id() + mark));
    cells.add(bars.of(injector));
    cells.add(both(injector, bars::figure));
    cells.add(both(injector, flow -> flow.readings().spray().map(limits::sprayWord)));
    cells.add(both(injector, BenchSheetPaper::drops));
    cells.add(
        Html.text(
            mixture().map(m -> m.richness().get(injector.id())).map(m -> richness(m)).orElse("")));
    Fitness todo = injector.fitness();
    cells.add(todo == Fitness.FIT ? Html.text(todo.words()) : Html.of("span.todo", todo.words()));
    return cells;
  }

  private static Optional<String> drops(FlowReport flow) {
    return Optional.of(flow.readings())
        .flatMap(BenchReadings::drops)
        .map(BenchDrops::perMinute)
        .map(drops -> String.format(Locale.ROOT, "%.1f", drops).replace(".0", ""));
  }

  private static String richness(double share) {
    double percent = Math.rint(1000 * share) / 10;
    if (percent == 0) {
      return "average";
    }
    return String.format(
        Locale.ROOT, "%.1f %% %s", Math.abs(percent), percent < 0 ? "lean" : "rich");
  }

  /** Before on the first line, after on the second, as the bars stand. */
  private Html both(InjectorReport injector, Function<FlowReport, Optional<String>> figure) {
    List<Html> lines = new ArrayList<>();
    for (Service state : Service.values()) {
      if (report.sheet().has(state)) {
        String text = injector.flow(state).flatMap(figure).orElse("–");
        lines.add(Html.of("div", text));
      }
    }
    return Html.all(lines);
  }
}
