package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.Bench;
import holdcurve.bench.flowsheet.BenchInjector;
import holdcurve.bench.flowsheet.BenchReadings;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.Service;
import holdcurve.common.number.Celsius;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

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
  /** A form with nothing special in it. */
  static SheetForm usual() {
    return new SheetForm("2.5", "n-heptane", "20", "1", "2.5");
  }

  /** The text of a table. Two lines an injector, so that each column has one meaning. */
  String text(List<SheetRow> rows, String serviced) {
    StringBuilder text = new StringBuilder();
    setting(text, "pressure_bar", pressure);
    setting(text, "fluid", fluid);
    setting(text, "fluid_temp_C", celsius);
    setting(text, "drop_time_min", dropMinutes);
    setting(text, "serviced", serviced);
    text.append("injector;service;static_mL_min;dynamic_")
        .append(pulse.strip().replace(',', '.'))
        .append("ms_mL_1000;drops;spray;coil_ohm\n");
    for (SheetRow row : rows) {
      if (!row.isEmpty()) {
        add(text, row);
      }
    }
    return text.toString();
  }

  private static void setting(StringBuilder text, String name, String value) {
    if (!value.isBlank()) {
      text.append(name).append(": ").append(value.strip()).append('\n');
    }
  }

  /** What isn't static flow belongs to the state that was measured last. */
  private static void add(StringBuilder text, SheetRow row) {
    boolean after = !row.text(SheetColumn.AFTER).isEmpty();
    if (after && !row.text(SheetColumn.BEFORE).isEmpty()) {
      line(text, row, Service.BEFORE, row.text(SheetColumn.BEFORE), "", "", "", "");
    }
    line(
        text,
        row,
        after ? Service.AFTER : Service.BEFORE,
        row.text(after ? SheetColumn.AFTER : SheetColumn.BEFORE),
        row.text(SheetColumn.PULSE),
        row.text(SheetColumn.DROPS),
        row.text(SheetColumn.SPRAY),
        row.text(SheetColumn.COIL));
  }

  private static void line(StringBuilder text, SheetRow row, Service state, String... cells) {
    text.append(row.id().get().strip()).append(';').append(state.word());
    for (String cell : cells) {
      text.append(';').append(cell.replace(';', ' '));
    }
    text.append('\n');
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
        .flatMap(injector -> injector.after().or(injector::before).stream())
        .flatMap(readings -> readings.dynamicFlows().stream())
        .mapToDouble(flow -> flow.pulse())
        .min();
  }

  /** The line that an injector of a sheet fills. */
  static SheetRow row(BenchInjector injector, BenchSheet sheet) {
    SheetRow row = new SheetRow(injector.id());
    BenchReadings latest = injector.after().or(injector::before).orElseThrow();
    row.cell(SheetColumn.BEFORE).set(staticFlow(injector.before()));
    row.cell(SheetColumn.AFTER).set(staticFlow(injector.after()));
    OptionalDouble pulse = pulse(sheet);
    if (pulse.isPresent() && latest.dynamicFlow(pulse.getAsDouble()).isPresent()) {
      double volume = latest.dynamicFlow(pulse.getAsDouble()).getAsDouble();
      row.cell(SheetColumn.PULSE).set(figure(1e9 * volume));
    }
    latest.drops().ifPresent(d -> row.cell(SheetColumn.DROPS).set(Integer.toString(d.drops())));
    latest.spray().ifPresent(s -> row.cell(SheetColumn.SPRAY).set(Integer.toString(s)));
    latest.coil().ifPresent(ohm -> row.cell(SheetColumn.COIL).set(figure(ohm)));
    return row;
  }

  private static String staticFlow(Optional<BenchReadings> readings) {
    OptionalDouble flow = readings.map(BenchReadings::staticFlow).orElse(OptionalDouble.empty());
    return flow.isPresent() ? figure(flow.getAsDouble() * 60e6) : "";
  }

  static String figure(double value) {
    return new BigDecimal(value)
        .round(new MathContext(4))
        .stripTrailingZeros()
        .toPlainString()
        .toLowerCase(Locale.ROOT);
  }
}
