package holdcurve.record.log;

import holdcurve.common.input.InputException;
import holdcurve.common.message.Message;
import holdcurve.record.log.RowReader.EventLine;
import holdcurve.record.log.RowReader.Row;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a gauge log in any of the shapes in which people and loggers write one, and says what it
 * understood.
 *
 * <p>The canonical shape is CSV with the headings {@code
 * time_s,pressure_bar[,fuel_temp_C][,event]}, comment lines that start with '#', and time zero at
 * the pump stop unless an event says {@code pump stop}. Also read: other separators, decimal
 * commas, times with colons or in minutes, pressures in mbar, kPa, MPa, psi or kg/cm², temperatures
 * in °F or K, columns in any order, tables without headings, UTF-16 and Windows-1252.
 *
 * <p>All methods throw {@link InputException} where the text can't be read as one log.
 */
public final class GaugeLogReader {
  private static final int FEWEST = 3;
  private static final double LATEST_START = 3600;

  /** A car parked for a week tells no more than one parked for a night [s]. */
  private static final double LONGEST_HOLD = 7 * 86_400;

  private final LogText source;
  private final int fewest;
  private final List<PassedOver> passedOver = new ArrayList<>();

  private GaugeLogReader(LogText source) {
    this(source, FEWEST);
  }

  private GaugeLogReader(LogText source, int fewest) {
    this.source = source;
    this.fewest = fewest;
  }

  /** Reads a file of at most 32 MB. */
  public static LogImport read(Path file) {
    return new GaugeLogReader(LogText.of(file)).read();
  }

  /** Like {@link #read(Path)}, for a hold still under way: one reading is enough. */
  public static LogImport readUnfinished(Path file) {
    return new GaugeLogReader(LogText.of(file), 0).read();
  }

  /**
   * Reads a text that may still grow: one reading is enough.
   *
   * @param name where it comes from, for messages
   */
  public static LogImport readUnfinished(String name, String text) {
    return new GaugeLogReader(LogText.of(name, text), 0).read();
  }

  /**
   * Reads characters to their end; the caller closes the reader.
   *
   * @param name where they come from, for messages
   */
  public static LogImport read(String name, Reader reader) throws IOException {
    return new GaugeLogReader(LogText.of(name, reader)).read();
  }

  /**
   * Reads a text, for example from the clipboard.
   *
   * @param name where it comes from, for messages
   */
  public static LogImport read(String name, String text) {
    return new GaugeLogReader(LogText.of(name, text)).read();
  }

  /** Long, because it is the order of the work: one step a line. */
  private LogImport read() {
    new LogVersion(source).require();
    requireTable();
    Layout layout = new LayoutFinder(source).find();
    RowReader reader = readRows(layout);
    requireMostlyReadings(reader);
    reader.requireOneTimeForm();
    TimeOrder order = new TimeOrder(source, layout);
    List<Row> rows = order.sort(reader.rows);
    PumpStop stop = PumpStop.find(reader.events);
    GaugeLog log = log(rows, reader.events, stop);
    requireClock(rows, stop);
    passedOver.addAll(reader.passedOver);
    PressureCheck pressures = new PressureCheck(source, layout, log, rows, reader.values.unusable);
    pressures.require(odd -> odd.sure() && fewest > 0);
    requireHold(log, stop);
    requireEnd(rows, log);
    List<Message> said = new ArrayList<>();
    if (!source.encoding().isEmpty()) {
      said.add(Message.plain("Text read as " + source.encoding() + "."));
    }
    said.addAll(Message.plain(new ColumnSummary(layout, reader).sentences()));
    said.add(Message.plain(stop.sentence()));
    said.addAll(Message.plain(new EventSummary(reader.events, stop).sentences()));
    said.addAll(Message.plain(order.said()));
    new CutEnd(source, layout, reader.rows).sentence().map(Message::plain).ifPresent(said::add);
    said.addAll(Message.plain(pressures.doubts()));
    said.addAll(new LogSummary(log, passedOver).sentences());
    return new LogImport(log, said, passedOver, layout.headings().size(), layout.pressureUnit());
  }

  private void requireTable() {
    String begins = source.text().stripLeading();
    if (begins.startsWith("{") || begins.startsWith("<")) {
      throw InputException.at(
          source.name(),
          "line 1",
          "the file begins with '"
              + PassedOver.shortened(begins.lines().findFirst().orElse(""))
              + "'",
          "name a log: a table with a time and a pressure in each line");
    }
  }

  private RowReader readRows(Layout layout) {
    RowReader reader = new RowReader(source, layout);
    LineCursor cursor = source.lines();
    while (cursor.next()) {
      if (!cursor.holdsData()) {
        continue;
      }
      if (cursor.number() > layout.lastHeading()) {
        reader.read(cursor.number(), cursor.line());
      } else if (!layout.headings().contains(cursor.number())) {
        passedOver.add(new PassedOver(cursor.number(), "stands above the headings", cursor.line()));
      }
    }
    return reader;
  }

  private void requireMostlyReadings(RowReader reader) {
    int lost = reader.passedOver.size();
    int used = reader.rows.size() + (int) reader.events.stream().filter(e -> !e.beside()).count();
    if (lost + used == 0) {
      throw InputException.at(
          source.name(), "", "there are headings but no readings", "add the readings below them");
    }
    if (lost > used) {
      PassedOver first = reader.passedOver.get(0);
      throw InputException.at(
          source.name(),
          "line " + first.line(),
          "'"
              + first.text()
              + "' "
              + first.reason()
              + ", like "
              + lost
              + " of "
              + (lost + used)
              + " lines",
          "a log has a time and a pressure in most lines");
    }
  }

  private GaugeLog log(List<Row> rows, List<EventLine> events, PumpStop stop) {
    return new GaugeLog(
        source.name(),
        rows.stream().map(Row::reading).toList(),
        events.stream().map(EventLine::event).toList(),
        stop.time());
  }

  private void requireClock(List<Row> rows, PumpStop stop) {
    if (stop.at().isEmpty() && !rows.isEmpty() && rows.get(0).reading().time() > LATEST_START) {
      Row first = rows.get(0);
      throw InputException.at(
          source.name(),
          "line " + first.line(),
          "the readings begin at "
              + NumberText.few(first.reading().time())
              + " s and no event marks the pump stop",
          "count the time from the pump stop, or write 'pump stop' in an event column");
    }
  }

  private void requireHold(GaugeLog log, PumpStop stop) {
    int usable = log.hold().size();
    if (fewest > 0 && usable >= fewest && log.holdSpan() == 0) {
      throw InputException.at(
          source.name(),
          "",
          "all " + usable + " readings of the hold stand at one time",
          "write the time of each reading");
    }
    if (usable < fewest) {
      String where = stop.at().map(event -> " in line " + event.line()).orElse("");
      throw InputException.at(
          source.name(),
          "",
          (usable == 0 ? "no" : "only " + usable)
              + " usable reading"
              + (usable == 1 ? "" : "s")
              + " at or after the pump stop"
              + where,
          "a hold needs at least "
              + fewest
              + lost()
              + (usable == 0 && !log.readings().isEmpty()
                  ? "; read on after the pump stops, from time zero"
                  : ""));
    }
  }

  private String lost() {
    return passedOver.stream()
        .findFirst()
        .map(line -> "; line " + line.line() + " " + line.reason() + ": '" + line.text() + "'")
        .orElse("");
  }

  private void requireEnd(List<Row> rows, GaugeLog log) {
    if (log.holdSpan() > LONGEST_HOLD) {
      Row last = rows.get(rows.size() - 1);
      throw InputException.at(
          source.name(),
          "line " + last.line(),
          "the hold would last "
              + NumberText.few(Math.rint(log.holdSpan() / 86_400))
              + " days up to here",
          "check the time and its unit, and leave out what is beyond "
              + NumberText.few(LONGEST_HOLD / 86_400)
              + " days");
    }
  }
}
