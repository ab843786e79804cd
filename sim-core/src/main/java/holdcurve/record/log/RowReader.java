package holdcurve.record.log;

import holdcurve.common.input.InputException;
import holdcurve.common.text.SpreadsheetText;
import holdcurve.record.log.CellReader.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the lines below the headings one by one and keeps account of each. */
final class RowReader {
  /** A reading and the line it came from. */
  record Row(int line, Reading reading) {}

  /** An event, the line it came from, and whether a reading stands in that line. */
  record EventLine(int line, TimedEvent event, boolean beside) {}

  private final LogText source;
  private final Layout layout;

  final CellReader values;
  final List<Row> rows = new ArrayList<>();
  final List<EventLine> events = new ArrayList<>();
  final List<PassedOver> passedOver = new ArrayList<>();
  int extraCells;
  boolean trailingNotes;

  RowReader(LogText source, Layout layout) {
    this.source = source;
    this.layout = layout;
    this.values = new CellReader(layout);
  }

  /** Takes one line that is neither blank nor a comment. */
  void read(int line, String text) {
    List<String> cells = layout.separator().split(text);
    try {
      requireNoSplitDecimals(cells);
      String pressure = cell(cells, layout.pressure());
      requireSomeNumber(cell(cells, layout.time()), pressure);
      double time = values.time(line, cell(cells, layout.time()));
      Optional<LogEvent> event = event(cells);
      if (!pressure.isEmpty()) {
        rows.add(new Row(line, reading(line, time, event, cells)));
      } else if (event.isEmpty()) {
        throw new Unreadable("has no pressure");
      }
      boolean beside = !pressure.isEmpty();
      event.ifPresent(e -> events.add(new EventLine(line, new TimedEvent(time, e), beside)));
    } catch (Unreadable e) {
      passedOver.add(new PassedOver(line, e.getMessage(), text));
    }
  }

  /** "30,1,9" below "time_s,bar" is 1.9 bar torn apart, not 1 bar and something else. */
  private void requireNoSplitDecimals(List<String> cells) throws Unreadable {
    int next = layout.pressure() + 1;
    boolean onlyDigits = next < cells.size() && cells.get(next).matches("\\d{1,3}");
    boolean whole = onlyDigits && cells.get(layout.pressure()).matches("\\d{1,2}");
    boolean unasked = next >= layout.width() || next == layout.event() || next == layout.remark();
    boolean points = values.decimalComma.equals(Optional.of(false));
    if (layout.separator() == Separator.COMMA && unasked && whole && points) {
      throw new Unreadable("has a comma too many, perhaps for a decimal point,");
    }
  }

  private static void requireSomeNumber(String time, String pressure) throws Unreadable {
    boolean timed = ClockTime.hasColon(time) || Quantity.parse(time).isPresent();
    if (!timed && Quantity.parse(pressure).isEmpty()) {
      throw new Unreadable("is not a reading");
    }
  }

  private Reading reading(int line, double time, Optional<LogEvent> event, List<String> cells)
      throws Unreadable {
    String written = cell(cells, layout.pressure());
    Quantity pressure = values.pressure(written);
    double pascals = values.pascals(line, written, pressure);
    double kelvins = values.kelvins(line, cell(cells, layout.temperature()));
    return new Reading(time, pascals, kelvins, event, pressure.doubtful());
  }

  private Optional<LogEvent> event(List<String> cells) {
    List<String> beyond = new ArrayList<>();
    for (String cell : cells.subList(Math.min(layout.width(), cells.size()), cells.size())) {
      if (layout.separator() != Separator.BLANKS && LayoutFinder.isNumber(cell)) {
        extraCells++;
      } else if (!cell.isEmpty()) {
        beyond.add(cell);
      }
    }
    boolean spilt = layout.separator() == Separator.BLANKS && layout.event() == layout.width() - 1;
    String event = words(cell(cells, layout.event()), spilt ? beyond : List.of());
    String remark = words(cell(cells, layout.remark()), spilt ? List.of() : beyond);
    trailingNotes |= !spilt && !beyond.isEmpty() && layout.remark() < 0;
    if (LogEvent.isBlank(event)) {
      return LogEvent.isBlank(remark) ? Optional.empty() : Optional.of(LogEvent.remark(remark));
    }
    LogEvent happened = LogEvent.of(event);
    return Optional.of(
        LogEvent.isBlank(remark)
            ? happened
            : new LogEvent(happened.kind(), happened.text() + "; " + remark));
  }

  private static String words(String cell, List<String> more) {
    return SpreadsheetText.original(String.join(" ", cell, String.join(" ", more)).strip());
  }

  private static String cell(List<String> cells, int column) {
    return column >= 0 && column < cells.size() ? cells.get(column) : "";
  }

  /** Refuses plain numbers among times with colons where no heading says what they count. */
  void requireOneTimeForm() {
    int line = values.plainTime;
    if (line > 0 && !values.timeForms.isEmpty()) {
      String text = cell(layout.separator().split(source.line(line)), layout.time());
      String forms = String.join(" or ", values.timeForms.keySet());
      throw InputException.at(
          source.name(),
          "line " + line,
          "the time '" + text + "' has no colon, where other lines have " + forms,
          "write all times alike");
    }
  }
}
