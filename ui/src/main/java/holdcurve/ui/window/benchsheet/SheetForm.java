package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.Bench;
import holdcurve.bench.flowsheet.BenchInjector;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReadings;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.common.number.Celsius;
import holdcurve.file.BenchSheetWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.StringProperty;

/**
 * Turns what was typed into the text of a sheet, and a sheet into what is typed. So typed sheets
 * and files go through the same reader and get the same refusals.
 *
 * @param pressure of the bench, as typed [bar]
 * @param fluid id of the fluid
 * @param celsius temperature of the fluid, as typed [°C]
 * @param dropMinutes time in which drops were counted, as typed [min]
 * @param pulse width of the pulses, as typed [ms]
 */
record SheetForm(String pressure, String fluid, String celsius, String dropMinutes, String pulse) {
  private static final List<String> FIELDS =
      List.of("# format:", "# pressure_bar:", "# fluid:", "# fluid_temp_C:", "# serviced:");

  /** A form with nothing special in it. */
  static SheetForm usual() {
    return new SheetForm("2.5", "n-heptane", "20", "1", "2.5");
  }

  /**
   * The text of a table: one line an injector, before and after side by side.
   *
   * @param kept settings of the sheet that have no field
   */
  String text(List<SheetRow> rows, String serviced, String kept) {
    StringBuilder text = new StringBuilder(kept);
    setting(text, "pressure_bar", pressure);
    setting(text, "fluid", fluid);
    setting(text, "fluid_temp_C", celsius);
    setting(text, "drop_time_min", dropMinutes);
    setting(text, "serviced", serviced);
    text.append("injector");
    for (SheetColumn column : SheetColumn.values()) {
      text.append(';').append(column.heading());
      if (column.isPulse()) {
        text.append('_').append(pulse.strip().replace(',', '.')).append("ms_mL_1000");
      }
    }
    text.append('\n');
    rows.stream().filter(row -> !row.isEmpty()).forEach(row -> line(text, row));
    return text.toString();
  }

  /** What a pasted table leaves open. */
  Map<String, String> settings() {
    return Map.of(
        "pressure_bar",
        pressure.strip(),
        "fluid",
        fluid,
        "fluid_temp_c",
        celsius.strip(),
        "drop_time_min",
        dropMinutes.strip());
  }

  private static void setting(StringBuilder text, String name, String value) {
    if (!value.isBlank()) {
      text.append(name).append(": ").append(value.strip()).append('\n');
    }
  }

  private static void line(StringBuilder text, SheetRow row) {
    text.append(row.id().get().strip());
    for (SheetColumn column : SheetColumn.values()) {
      text.append(';').append(row.text(column).replace(';', ' '));
    }
    text.append('\n');
  }

  /** Settings of a sheet that the form has no field for, as they stand above its table. */
  static String kept(BenchSheet sheet, BenchLimits limits) {
    return BenchSheetWriter.csv(sheet, limits)
        .lines()
        .filter(line -> line.startsWith("# ") && FIELDS.stream().noneMatch(line::startsWith))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }

  /** The form that a sheet fills. */
  static SheetForm of(BenchSheet sheet) {
    Bench bench = sheet.bench(sheet.latest());
    List<BenchReadings> latest =
        sheet.injectors().stream()
            .flatMap(injector -> injector.after().or(injector::before).stream())
            .toList();
    double minutes =
        latest.stream()
            .flatMap(r -> r.drops().stream())
            .mapToDouble(d -> d.time() / 60)
            .findFirst()
            .orElse(1);
    return new SheetForm(
        figure(bench.point().pressure() / 1e5),
        bench.point().fluid().id(),
        figure(Celsius.of(bench.point().temperature())),
        figure(minutes),
        figure(1e3 * pulse(sheet).orElse(2.5e-3)));
  }

  /** The shortest pulse of a sheet [s]. */
  private static OptionalDouble pulse(BenchSheet sheet) {
    return sheet.injectors().stream()
        .flatMap(injector -> Stream.of(injector.before(), injector.after()))
        .flatMap(Optional::stream)
        .flatMap(readings -> readings.dynamicFlows().stream())
        .mapToDouble(flow -> flow.pulse())
        .min();
  }

  /** The line that an injector of a sheet fills. */
  static SheetRow row(BenchInjector injector, BenchSheet sheet, BenchLimits limits) {
    SheetRow row = new SheetRow(injector.id());
    injector.before().ifPresent(readings -> fill(row, readings, sheet, limits, true));
    injector.after().ifPresent(readings -> fill(row, readings, sheet, limits, false));
    injector.serial().ifPresent(row.cell(SheetColumn.MARK)::set);
    return row;
  }

  private static void fill(
      SheetRow row, BenchReadings readings, BenchSheet sheet, BenchLimits limits, boolean before) {
    row.cell(before ? SheetColumn.BEFORE : SheetColumn.AFTER)
        .set(figure(readings.staticFlow(), 60e6));
    pulse(sheet)
        .ifPresent(
            pulse ->
                row.cell(before ? SheetColumn.PULSE_BEFORE : SheetColumn.PULSE_AFTER)
                    .set(figure(readings.dynamicFlow(pulse), 1e9)));
    StringProperty drops = row.cell(before ? SheetColumn.DROPS_BEFORE : SheetColumn.DROPS_AFTER);
    readings.drops().ifPresent(d -> drops.set(Integer.toString(d.drops())));
    StringProperty spray = row.cell(before ? SheetColumn.SPRAY_BEFORE : SheetColumn.SPRAY_AFTER);
    readings.spray().ifPresent(grade -> spray.set(limits.sprayWord(grade)));
    if (readings.coil().isPresent()) {
      row.cell(SheetColumn.COIL).set(figure(readings.coil(), 1));
    }
  }

  private static String figure(OptionalDouble value, double scale) {
    return value.isPresent() ? figure(scale * value.getAsDouble()) : "";
  }

  static String figure(double value) {
    return new BigDecimal(value)
        .round(new MathContext(4))
        .stripTrailingZeros()
        .toPlainString()
        .toLowerCase(Locale.ROOT);
  }
}
