package holdcurve.record.log;

import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Celsius;
import holdcurve.common.text.SpreadsheetText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes the canonical log: {@code time_s,pressure_bar[,fuel_temp_C][,event]}, time zero at the
 * pump stop, LF line ends, a format line first. Times are rounded to 1 ms, pressures to 1 Pa,
 * temperatures to 0.01 K; a doubtful reading has a question mark behind its pressure. {@link
 * GaugeLogReader} reads it back to the same log on that clock, provided the pump-stop events of the
 * log, if it has any, agree with its pump stop.
 */
public final class GaugeLogWriter {

  private record Line(double time, List<String> cells) {}

  private final GaugeLog log;
  private final boolean temperatures;
  private final boolean events;

  private final PressureUnit unit;

  private GaugeLogWriter(GaugeLog log, PressureUnit unit) {
    this.unit = unit;
    this.log = log.fromPumpStop();
    this.temperatures = log.readings().stream().anyMatch(Reading::hasTemperature);
    this.events = !log.events().isEmpty();
  }

  /** The whole file as text. */
  public static String write(GaugeLog log) {
    return write(log, PressureUnit.BAR);
  }

  /** The whole file as text, with pressures in a unit that its heading names. */
  public static String write(GaugeLog log, PressureUnit unit) {
    StringBuilder text = new StringBuilder();
    try {
      new GaugeLogWriter(log, unit).writeTo(text);
    } catch (IOException e) {
      throw new UncheckedIOException("a StringBuilder does not fail", e);
    }
    return text.toString();
  }

  private void writeTo(Appendable out) throws IOException {
    out.append(LogVersion.LINE).append('\n');
    CSVPrinter printer =
        new CSVPrinter(out, CSVFormat.DEFAULT.builder().setRecordSeparator('\n').build());
    printer.printRecord(headings());
    for (Line line : lines()) {
      printer.printRecord(line.cells);
    }
  }

  private List<String> headings() {
    List<String> headings = new ArrayList<>(List.of("time_s", "pressure_" + unit.symbol()));
    if (temperatures) {
      headings.add("fuel_temp_C");
    }
    if (events) {
      headings.add("event");
    }
    return headings;
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    log.readings().forEach(reading -> lines.add(line(reading)));
    List<TimedEvent> alone = new ArrayList<>(log.events());
    GaugeLog.eventsOf(log.readings()).forEach(alone::remove);
    alone.forEach(event -> lines.add(line(event)));
    lines.sort(Comparator.comparingDouble(Line::time));
    return lines;
  }

  private Line line(Reading reading) {
    double shown = unit.fromPascal(reading.pressure());
    String pressure =
        NumberText.between(unit == PressureUnit.BAR ? 2 : 1, decimals(), shown)
            + (reading.doubtful() ? "?" : "");
    String temperature =
        reading.hasTemperature()
            ? NumberText.between(1, 2, Celsius.of(reading.fuelTemperature()))
            : "";
    return line(
        reading.time(), pressure, temperature, reading.event().map(LogEvent::written).orElse(""));
  }

  /** So many that a pascal shows. */
  private int decimals() {
    return (int) Math.ceil(Math.log10(unit.toPascal(1)) - 1e-9);
  }

  private Line line(TimedEvent event) {
    return line(event.time(), "", "", event.event().written());
  }

  private Line line(double time, String pressure, String temperature, String event) {
    List<String> cells = new ArrayList<>(List.of(NumberText.between(0, 3, time), pressure));
    if (temperatures) {
      cells.add(temperature);
    }
    if (events) {
      cells.add(SpreadsheetText.harmless(event));
    }
    return new Line(time, cells);
  }
}
