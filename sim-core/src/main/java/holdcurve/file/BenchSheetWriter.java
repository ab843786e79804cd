package holdcurve.file;

import holdcurve.bench.flowsheet.Bench;
import holdcurve.bench.flowsheet.BenchDrops;
import holdcurve.bench.flowsheet.BenchInjector;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReadings;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.DynamicFlow;
import holdcurve.bench.flowsheet.Service;
import holdcurve.common.number.Celsius;
import holdcurve.common.text.SpreadsheetText;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Writes a bench sheet as the table that {@link BenchSheetReader} reads: a line an injector, before
 * and after cleaning side by side.
 */
public final class BenchSheetWriter {
  private static final double PER_MINUTE = 60e6;

  private final BenchSheet sheet;
  private final BenchLimits limits;
  private final StringBuilder text = new StringBuilder();

  private record Column(String heading, Function<BenchInjector, String> cell) {}

  private BenchSheetWriter(BenchSheet sheet, BenchLimits limits) {
    this.sheet = sheet;
    this.limits = limits;
  }

  /** The sheet as CSV text of format {@value BenchSheet#FORMAT}. */
  public static String csv(BenchSheet sheet, BenchLimits limits) {
    return new BenchSheetWriter(sheet, limits).csv();
  }

  private String csv() {
    setting("format", BenchSheet.FORMAT);
    setting("title", sheet.title().replaceAll("\\s+", " "));
    bench("", sheet.benchAfter());
    if (!sheet.benchBefore().equals(sheet.benchAfter())) {
      bench("before_", sheet.benchBefore());
    }
    sheet.ratedFlow().ifPresent(flow -> setting("rated_mL_min", figure(PER_MINUTE * flow)));
    sheet.serviced().ifPresent(day -> setting("serviced", day.toString()));
    sheet.measured().ifPresent(day -> setting("date", day.toString()));
    List<Column> columns = columns();
    text.append(String.join(",", columns.stream().map(Column::heading).toList())).append('\n');
    for (BenchInjector injector : sheet.injectors()) {
      text.append(String.join(",", columns.stream().map(c -> c.cell.apply(injector)).toList()))
          .append('\n');
    }
    return text.toString();
  }

  private void setting(String name, String value) {
    text.append("# ").append(name).append(": ").append(value).append('\n');
  }

  private void bench(String prefix, Bench bench) {
    setting(prefix + "pressure_bar", figure(bench.point().pressure() / 1e5));
    setting(prefix + "fluid", bench.point().fluid().id());
    setting(prefix + "fluid_temp_C", figure(Celsius.of(bench.point().temperature())));
    setting(prefix + "repeatability_percent", figure(100 * bench.repeatability()));
    setting(prefix + "accuracy_percent", figure(100 * bench.accuracy()));
  }

  /** Those that have something in them, number and static flow always. */
  private List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("injector", injector -> cell(injector.id())));
    addFilled(columns, "serial", i -> i.serial().map(BenchSheetWriter::cell).orElse(""));
    addBoth(columns, "static_mL_min", r -> figure(r.staticFlow(), PER_MINUTE));
    for (double pulse : pulses()) {
      addBoth(
          columns,
          "dynamic_" + figure(1e3 * pulse) + "ms_mL_1000",
          r -> figure(r.dynamicFlow(pulse), 1e9));
    }
    addBoth(columns, "drops", r -> r.drops().map(d -> Integer.toString(d.drops())).orElse(""));
    addBoth(columns, "drop_time_min", r -> r.drops().map(d -> figure(minutes(d))).orElse(""));
    addBoth(columns, "spray", r -> r.spray().map(limits::sprayWord).orElse(""));
    addBoth(columns, "coil_ohm", r -> figure(r.coil(), 1));
    return columns;
  }

  private static double minutes(BenchDrops drops) {
    return drops.time() / 60;
  }

  private SortedSet<Double> pulses() {
    SortedSet<Double> pulses = new TreeSet<>();
    for (Service state : Service.values()) {
      sheet.injectors().stream()
          .flatMap(injector -> injector.readings(state).stream())
          .flatMap(readings -> readings.dynamicFlows().stream())
          .map(DynamicFlow::pulse)
          .forEach(pulses::add);
    }
    return pulses;
  }

  private void addBoth(
      List<Column> columns, String heading, Function<BenchReadings, String> reading) {
    for (Service state : Service.values()) {
      addFilled(
          columns,
          state.word() + "_" + heading,
          injector -> injector.readings(state).map(reading).orElse(""));
    }
  }

  private void addFilled(
      List<Column> columns, String heading, Function<BenchInjector, String> cell) {
    if (sheet.injectors().stream().anyMatch(injector -> !cell.apply(injector).isEmpty())) {
      columns.add(new Column(heading, cell));
    }
  }

  private static String cell(String word) {
    String text = SpreadsheetText.harmless(word);
    return text.matches("[^\",;\\s#]+") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }

  private static String figure(OptionalDouble value, double scale) {
    return value.isPresent() ? figure(scale * value.getAsDouble()) : "";
  }

  private static String figure(double value) {
    return new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros().toPlainString();
  }
}
