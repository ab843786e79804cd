package holdcurve.ui.window.benchsheet;

import holdcurve.advice.whatif.PlainNumbers;
import holdcurve.bench.droptest.DropTest;
import holdcurve.common.message.PressureUnit;
import holdcurve.ui.window.job.PressureFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * How a drop-per-pulse test was done, as typed. Readings are typed in the unit shown, and become
 * bar in the text that the reader of drop tests gets, so that typed tests and files meet the same
 * refusals.
 */
final class DropForm {
  /** Gauge read to a twentieth of a bar [Pa]. */
  private static final double USUAL_STEP = 5e3;

  private final StringProperty step = new SimpleStringProperty("");
  private final StringProperty pulses = new SimpleStringProperty("");
  private final StringProperty width = new SimpleStringProperty("");
  private final StringProperty pause = new SimpleStringProperty("");
  private final StringProperty watch = new SimpleStringProperty("");
  private final StringProperty idle = new SimpleStringProperty("");
  private final StringProperty drawn = new SimpleStringProperty("");
  private final StringProperty drawnFrom = new SimpleStringProperty("");
  private final StringProperty drawnTo = new SimpleStringProperty("");

  /** Back to what is usual: common practice, no source. */
  void usual(PressureFormat pressures) {
    step.set(pressures.number(USUAL_STEP));
    pulses.set("1");
    width.set("250");
    pause.set("8");
    watch.set("60");
    idle.set("60");
    List.of(drawn, drawnFrom, drawnTo).forEach(field -> field.set(""));
  }

  /** As a test says it. */
  void fill(DropTest test, PressureFormat pressures) {
    step.set(pressures.number(test.resolution()));
    pulses.set(Integer.toString(test.shot().pulses()));
    width.set(PlainNumbers.number(1e3 * test.shot().width()));
    pause.set(PlainNumbers.number(test.shot().pause()));
    if (test.watch() > 0) {
      watch.set(PlainNumbers.number(test.watch()));
    }
    test.idleFalls().stream()
        .findFirst()
        .ifPresent(fall -> idle.set(PlainNumbers.number(fall.time())));
    drawn.set(test.drawOff().map(d -> PlainNumbers.number(1e6 * d.volume())).orElse(""));
    drawnFrom.set(test.drawOff().map(d -> pressures.number(d.from())).orElse(""));
    drawnTo.set(test.drawOff().map(d -> pressures.number(d.to())).orElse(""));
  }

  /** Rows that show what a test holds. */
  static List<DropRow> rows(DropTest test, PressureFormat pressures) {
    List<DropRow> rows = new ArrayList<>();
    test.firings()
        .forEach(
            firing -> {
              DropRow row = row(firing.injector(), firing.before(), firing.after(), pressures);
              firing.later().ifPresent(later -> row.later().set(pressures.number(later)));
              rows.add(row);
            });
    test.idleFalls()
        .forEach(fall -> rows.add(row(DropRow.IDLE, fall.before(), fall.after(), pressures)));
    return rows;
  }

  private static DropRow row(String id, double before, double after, PressureFormat pressures) {
    DropRow row = new DropRow(id);
    row.before().set(pressures.number(before));
    row.after().set(pressures.number(after));
    return row;
  }

  /** The text of a table. Its first lines are the settings; then a line a firing. */
  String text(List<DropRow> rows, PressureFormat pressures) {
    StringBuilder text = new StringBuilder();
    settings(pressures)
        .forEach(
            (name, value) -> {
              if (!value.isEmpty()) {
                text.append(name).append(": ").append(value).append('\n');
              }
            });
    text.append("injector;before_bar;after_bar;later_bar\n");
    rows.stream().filter(row -> !row.isEmpty()).forEach(row -> add(text, row, pressures));
    return text.toString();
  }

  /** As a table has them above its headings, and what a pasted one leaves open. */
  Map<String, String> settings(PressureFormat pressures) {
    Map<String, String> settings = new LinkedHashMap<>();
    settings.put("gauge_resolution_bar", bar(step.get(), pressures));
    settings.put("pulses", plain(pulses.get()));
    settings.put("pulse_ms", plain(width.get()));
    settings.put("wait_s", plain(pause.get()));
    settings.put("later_s", plain(watch.get()));
    settings.put("idle_s", plain(idle.get()));
    if (!drawn.get().isBlank()) {
      settings.put("drawn_ml", plain(drawn.get()));
      settings.put("drawn_from_bar", bar(drawnFrom.get(), pressures));
      settings.put("drawn_to_bar", bar(drawnTo.get(), pressures));
    }
    return settings;
  }

  private static void add(StringBuilder text, DropRow row, PressureFormat pressures) {
    text.append(plain(row.injector().get()))
        .append(';')
        .append(bar(row.before().get(), pressures))
        .append(';')
        .append(bar(row.after().get(), pressures))
        .append(';')
        .append(bar(row.later().get(), pressures))
        .append('\n');
  }

  private static String plain(String typed) {
    return typed.strip().replace(';', ' ').replace(',', '.');
  }

  /** What is no number stays as it was typed: the reader then says so. */
  private static String bar(String typed, PressureFormat pressures) {
    OptionalDouble pascals = pressures.parse(typed);
    return pascals.isPresent()
        ? String.format(Locale.ROOT, "%.5f", PressureUnit.BAR.fromPascal(pascals.getAsDouble()))
        : plain(typed);
  }

  /** Fields that are not pressures. */
  List<StringProperty> others() {
    return List.of(pulses, width, pause, watch, idle, drawn);
  }

  /** Fields that are pressures, in the unit shown. */
  List<StringProperty> pressures() {
    return List.of(step, drawnFrom, drawnTo);
  }

  /** Step to which the gauge was read, in the unit shown. */
  StringProperty step() {
    return step;
  }

  /** Pulses in a row. */
  StringProperty pulses() {
    return pulses;
  }

  /** Of each pulse [ms]. */
  StringProperty width() {
    return width;
  }

  /** From the reading before to the reading after [s]. */
  StringProperty pause() {
    return pause;
  }

  /** From the second reading to the third [s]. */
  StringProperty watch() {
    return watch;
  }

  /** How long the gauge was watched without firing [s]. */
  StringProperty idle() {
    return idle;
  }

  /** Fuel drawn off, where the circuit's give was measured [mL]. */
  StringProperty drawn() {
    return drawn;
  }

  StringProperty drawnFrom() {
    return drawnFrom;
  }

  StringProperty drawnTo() {
    return drawnTo;
  }
}
